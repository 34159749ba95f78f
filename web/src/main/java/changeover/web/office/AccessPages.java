package changeover.web.office;

import changeover.contracts.customers.AccessCodes;
import changeover.contracts.customers.Hazard;
import changeover.contracts.customers.Hazards;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Today;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/** What waits behind the door: dangers seen and cleared, keys and codes kept and forgotten. */
@Path("/{slug}/homes")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class AccessPages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance access(
                Frame frame,
                Home home,
                List<HouseCard.Danger> dangers,
                List<AccessCodes.Listed> codes,
                List<AccessCodes.GivenBack> returned,
                Said danger,
                Said code,
                Said back);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Homes homes;

    @Inject
    Hazards hazards;

    @Inject
    AccessCodes codes;

    @Inject
    Today today;

    @GET
    @Path("{home}/access")
    @Transactional
    public TemplateInstance access(@PathParam("home") UUID id) {
        return page(id, Said.blank(), Said.blank());
    }

    @POST
    @Path("{home}/hazards")
    public Response addDanger(
            @PathParam("slug") String slug, @PathParam("home") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    known(id);
                    String kind = typed.oneOf("kind", Set.copyOf(Hazard.KINDS));
                    String note = typed.line("note", 500);
                    typed.understood();
                    hazards.add(Hazard.seen(id, kind, note, frames.locale().getLanguage(), today.day()));
                    return SaidOnce.at(path(slug, id), "kept");
                },
                refusals -> page(id, Said.again(typed, refusals, frames.locale()), Said.blank()));
    }

    @POST
    @Path("{home}/hazards/{danger}/clearing")
    public Response clear(
            @PathParam("slug") String slug, @PathParam("home") UUID id, @PathParam("danger") UUID danger) {
        return desk.answer(
                () -> {
                    known(id);
                    if (hazards.of(id).stream().noneMatch(one -> one.id().equals(danger))) {
                        throw new NotFoundException();
                    }
                    hazards.clear(danger, today.day());
                    return SaidOnce.at(path(slug, id), "kept");
                },
                refusals -> page(id, Said.blank(), Said.blank()));
    }

    @POST
    @Path("{home}/codes")
    public Response addCode(
            @PathParam("slug") String slug, @PathParam("home") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    known(id);
                    String kind = typed.oneOf("kind", Set.of("key", "code", "alarm"));
                    String label = typed.line("label", 60);
                    String secret = typed.text("secret", 120);
                    typed.understood();
                    codes.add(id, kind, label, secret);
                    return SaidOnce.at(path(slug, id), "kept");
                },
                refusals -> page(id, Said.blank(), withoutSecret(Said.again(typed, refusals, frames.locale()))));
    }

    @POST
    @Path("{home}/codes/{code}/removal")
    public Response forget(@PathParam("slug") String slug, @PathParam("home") UUID id, @PathParam("code") UUID code) {
        return desk.answer(
                () -> {
                    known(id);
                    if (codes.list(id).stream().noneMatch(one -> one.id().equals(code))) {
                        throw new NotFoundException();
                    }
                    codes.remove(code);
                    return SaidOnce.at(path(slug, id), "kept");
                },
                refusals -> page(id, Said.blank(), Said.blank()));
    }

    /** A key or a code is in our hands no more: to whom it went, and when. */
    @POST
    @Path("{home}/codes/{code}/return")
    public Response giveBack(
            @PathParam("slug") String slug,
            @PathParam("home") UUID id,
            @PathParam("code") UUID code,
            MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    known(id);
                    boolean another = fields.getOrDefault("code", List.of()).stream()
                            .anyMatch(named -> !named.equals(code.toString()));
                    if (another
                            || codes.list(id).stream().noneMatch(one -> one.id().equals(code))) {
                        throw new NotFoundException();
                    }
                    String to = typed.text("to", 200);
                    var day = typed.day("day");
                    typed.understood();
                    codes.giveBack(id, code, to, day);
                    return SaidOnce.at(path(slug, id), "kept");
                },
                refusals -> page(id, Said.blank(), Said.blank(), Said.again(typed, refusals, frames.locale())));
    }

    /** What was typed comes back, but never a secret. */
    private static Said withoutSecret(Said said) {
        var values = new LinkedHashMap<>(said.values());
        values.remove("secret");
        return new Said(values, said.errors(), said.top());
    }

    private TemplateInstance page(UUID id, Said danger, Said code) {
        return page(id, danger, code, Said.blank());
    }

    private TemplateInstance page(UUID id, Said danger, Said code, Said back) {
        return Pages.access(
                frames.of(Tab.HOMES),
                known(id),
                hazards.of(id).stream()
                        .map(one -> new HouseCard.Danger(one.id(), one.kind(), one.note(), one.seenOn()))
                        .toList(),
                codes.list(id),
                codes.givenBack(id),
                danger,
                code,
                back);
    }

    private Home known(UUID id) {
        return homes.get(id).orElseThrow(NotFoundException::new);
    }

    private static String path(String slug, UUID id) {
        return "/" + slug + "/homes/" + id + "/access";
    }
}
