package changeover.web.office;

import changeover.contracts.customers.Building;
import changeover.contracts.customers.Buildings;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.words.FilledOn;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A home's own facts: where it is, what it is used for, how one gets in, which building it belongs to. */
@Path("/{slug}/homes")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class HomeEditPages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance homeedit(
                Frame frame, Home home, List<Building> buildings, Said form, int version);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Homes homes;

    @Inject
    Buildings buildings;

    @GET
    @Path("{home}/edit")
    @Transactional
    public TemplateInstance write(@PathParam("home") UUID id) {
        Home home = known(id);
        return page(home, Said.filled(filled(home.facts())), home.version());
    }

    @POST
    @Path("{home}")
    public Response keep(
            @PathParam("slug") String slug, @PathParam("home") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        int version = typed.whole("version", 0, Integer.MAX_VALUE);
        return desk.answer(
                () -> {
                    known(id);
                    Home.Facts facts = facts(typed);
                    if (facts.buildingId() != null
                            && buildings.get(facts.buildingId()).isEmpty()) {
                        throw new NotFoundException();
                    }
                    typed.understood();
                    homes.rewrite(id, facts, new FilledOn(version));
                    return SaidOnce.at("/" + slug + "/homes/" + id, "kept");
                },
                refusals -> {
                    Home home = known(id);
                    return page(home, Said.again(typed, refusals, frames.locale()), home.version());
                });
    }

    private TemplateInstance page(Home home, Said form, int version) {
        return Pages.homeedit(frames.of(Tab.HOMES), home, buildings.all(), form, version);
    }

    private Home known(UUID id) {
        return homes.get(id).orElseThrow(NotFoundException::new);
    }

    private static Home.Facts facts(Typed typed) {
        boolean built = typed.line("builtIn", 10) != null;
        return new Home.Facts(
                typed.idOrNone("building"),
                typed.line("unitLabel", 60),
                typed.text("street", 200),
                typed.text("city", 100),
                typed.text("region", 10),
                typed.line("postal", 20),
                typed.text("country", 2),
                typed.numberOrNone("latitude", -90, 90),
                typed.numberOrNone("longitude", -180, 180),
                typed.oneOf("propertyUse", Set.of("residential", "commercial")),
                built ? typed.whole("builtIn", 1600, 2200) : null,
                typed.line("gettingIn", 4000),
                typed.ticked("toBeRead"));
    }

    private static Map<String, String> filled(Home.Facts facts) {
        var fields = new HashMap<String, String>();
        fields.put("building", orEmpty(facts.buildingId()));
        fields.put("unitLabel", orEmpty(facts.unitLabel()));
        fields.put("street", facts.street());
        fields.put("city", facts.city());
        fields.put("region", facts.region());
        fields.put("postal", orEmpty(facts.postal()));
        fields.put("country", facts.country());
        fields.put("latitude", orEmpty(facts.latitude()));
        fields.put("longitude", orEmpty(facts.longitude()));
        fields.put("propertyUse", facts.propertyUse());
        fields.put("builtIn", orEmpty(facts.builtIn()));
        fields.put("gettingIn", orEmpty(facts.gettingIn()));
        fields.put("toBeRead", facts.toBeRead() ? "yes" : "");
        return fields;
    }

    private static String orEmpty(@Nullable Object value) {
        return value == null ? "" : value.toString();
    }
}
