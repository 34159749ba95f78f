package changeover.web.office;

import changeover.contracts.catalogue.Kind;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.tenants.Today;
import changeover.web.session.Desk;
import changeover.web.session.FactFields;
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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A machine that is added, or takes the place of another: which kind it is, then what its kind asks. */
@Path("/{slug}/{where:homes|buildings}/{place}/machines")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class NewMachinePages {

    /** A kind to choose from. */
    public record Choice(String code, String words) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance kinds(
                Frame frame, MachinePlaces.Place place, List<Choice> kinds, @Nullable Equipment replaces);

        static native TemplateInstance machineform(
                Frame frame,
                MachinePlaces.Place place,
                Choice kind,
                FactFields fields,
                Said form,
                @Nullable Equipment replaces);

        private Pages() {}
    }

    @PathParam("where")
    String where;

    @PathParam("slug")
    String slug;

    @PathParam("place")
    UUID placeId;

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    MachinePlaces places;

    @Inject
    AllEquipment equipment;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    Today today;

    @GET
    @Path("new")
    @Transactional
    public TemplateInstance write(@QueryParam("kind") @Nullable String code) {
        return code == null || code.isEmpty()
                ? choose(null)
                : form(kind(code), Said.filled(Map.of("name", name(kind(code)))), null);
    }

    @POST
    public Response add(MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    MachinePlaces.Place place = place();
                    Equipment.Facts facts = MachineForm.read(kind(typed), typed);
                    typed.understood();
                    places.add(place, places.ownedHere(facts));
                    return SaidOnce.at("/" + slug + "/" + place.path(), "machine-kept");
                },
                refusals -> form(kind(typed), Said.again(typed, refusals, frames.locale()), null));
    }

    @GET
    @Path("{machine}/replacing")
    @Transactional
    public TemplateInstance writeNext(@PathParam("machine") UUID id, @QueryParam("kind") @Nullable String code) {
        Equipment old = known(id);
        if (code == null || code.isEmpty()) {
            return choose(old);
        }
        return form(
                kind(code),
                Said.filled(Map.of("name", old.name(), "day", today.day().toString())),
                old);
    }

    @POST
    @Path("{machine}/replacing")
    public Response replace(@PathParam("machine") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        var day = typed.day("day");
        return desk.answer(
                () -> {
                    known(id);
                    Equipment.Facts facts = MachineForm.read(kind(typed), typed);
                    typed.understood();
                    Equipment next =
                            equipment.replace(id, places.ownedHere(facts), day).orElseThrow(NotFoundException::new);
                    return SaidOnce.at(path(next.id()), "kept");
                },
                refusals -> form(kind(typed), Said.again(typed, refusals, frames.locale()), known(id)));
    }

    private TemplateInstance choose(@Nullable Equipment replaces) {
        List<Choice> kinds = catalogue.read().catalogue().kinds().stream()
                .map(kind -> new Choice(kind.code(), name(kind)))
                .toList();
        return Pages.kinds(frames.of(Tab.HOMES), place(), kinds, replaces);
    }

    private TemplateInstance form(Kind kind, Said form, @Nullable Equipment replaces) {
        return Pages.machineform(
                frames.of(Tab.HOMES),
                place(),
                new Choice(kind.code(), name(kind)),
                FactFields.of(kind, frames.locale()),
                form,
                replaces);
    }

    private MachinePlaces.Place place() {
        return places.of(where, placeId).orElseThrow(NotFoundException::new);
    }

    private Equipment known(UUID id) {
        return places.machine(place(), id).orElseThrow(NotFoundException::new);
    }

    private Kind kind(Typed typed) {
        String code = typed.line("kind", 60);
        return kind(code == null ? "" : code);
    }

    private Kind kind(String code) {
        return catalogue.read().catalogue().findKind(code).orElseThrow(NotFoundException::new);
    }

    private String name(Kind kind) {
        return kind.wording().in(frames.locale());
    }

    private String path(UUID machine) {
        return "/" + slug + "/" + where + "/" + placeId + "/machines/" + machine;
    }
}
