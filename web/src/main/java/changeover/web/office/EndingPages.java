package changeover.web.office;

import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.EndingCause;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** An agreement ends before its term is over: from which day on, for which reason, and why in somebody's words. */
@Path("/{slug}/agreements/{id}/ending")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class EndingPages {

    public record View(UUID id, int number, String home, String plan) {}

    /** A reason of the closed list. */
    public record Cause(String code, String words) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance ending(Frame frame, View view, List<Cause> causes, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Agreements agreements;

    @Inject
    Homes homes;

    @GET
    @Transactional
    public TemplateInstance ending(
            @PathParam("id") UUID id,
            @QueryParam("day") @Nullable String day,
            @QueryParam("cause") @Nullable String cause) {
        return page(
                id,
                Said.filled(Map.of(
                        "day",
                        day == null ? frames.of(Tab.AGREEMENTS).today().toString() : day,
                        "cause",
                        cause == null ? "" : cause)));
    }

    @POST
    public Response end(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    found(id);
                    var day = typed.day("day");
                    EndingCause cause = cause(typed);
                    String why = typed.text("why", 500);
                    typed.understood();
                    agreements.end(id, day, cause, why);
                    return SaidOnce.at("/" + slug + "/agreements/" + id, "kept");
                },
                refusals -> page(id, Said.again(typed, refusals, frames.locale())));
    }

    private Agreement found(UUID id) {
        return agreements.find(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(UUID id, Said form) {
        Frame frame = frames.of(Tab.AGREEMENTS);
        Agreement agreement = found(id);
        View view = new View(
                id,
                agreement.number(),
                homes.get(agreement.homeId()).map(Home::line).orElse(""),
                agreement.planName().in(frame.locale()));
        return Pages.ending(frame, view, causes(frame.locale()), form);
    }

    /** Left open, none was chosen. */
    static @Nullable EndingCause cause(Typed typed) {
        return typed.line("cause", 20) == null
                ? null
                : EndingCause.find(typed.oneOf("cause", EndingCause.codes())).orElse(null);
    }

    static List<Cause> causes(Locale locale) {
        return Arrays.stream(EndingCause.values())
                .map(one -> new Cause(one.code(), one.wording().in(locale)))
                .toList();
    }
}
