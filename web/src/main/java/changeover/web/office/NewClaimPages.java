package changeover.web.office;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.scheduling.claims.NewClaim;
import changeover.scheduling.claims.PartClaims;
import changeover.scheduling.claims.SerialsRead;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.OrderChoices;
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
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A part that a visit replaced is claimed from its maker. */
@Path("/{slug}/visits/{id}/claims")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class NewClaimPages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance newclaim(
                Frame frame,
                UUID visit,
                UUID homeId,
                String home,
                List<OrderChoices.Choice> parts,
                List<OrderChoices.Choice> machines,
                String operation,
                Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    VisitLists visits;

    @Inject
    OrderChoices choices;

    @Inject
    PartClaims claims;

    @Inject
    SerialsRead serials;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance write(@PathParam("id") UUID id) {
        Said noted = serials.noted(id)
                .map(one -> Said.filled(Map.of(
                        "part", one.part(),
                        "equipment",
                                one.equipmentId() == null
                                        ? ""
                                        : one.equipmentId().toString(),
                        "maker", one.maker(),
                        "oldSerial", one.oldSerial(),
                        "newSerial", one.newSerial())))
                .orElseGet(Said::blank);
        return page(found(id), UUID.randomUUID().toString(), noted);
    }

    @POST
    public Response claim(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    UUID operation = typed.id("operation");
                    @Nullable
                    Money credit = typed.line("credit", 40) == null
                            ? null
                            : typed.money("credit", businesses.current().currency());
                    var facts = new NewClaim(
                            id,
                            typed.idOrNone("equipment"),
                            typed.text("part", 60),
                            typed.line("oldSerial", 80),
                            typed.line("newSerial", 80),
                            typed.text("maker", 120),
                            typed.line("number", 60),
                            credit,
                            typed.dayOrNone("claimed"));
                    typed.understood();
                    UUID claim = claims.claim(operation, facts).id();
                    return SaidOnce.at("/" + slug + "/parts/claims/" + claim, "kept");
                },
                refusals -> page(
                        found(id),
                        String.valueOf(fields.getFirst("operation")),
                        Said.again(typed, refusals, frames.locale())));
    }

    private VisitLists.Row found(UUID id) {
        return visits.one(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(VisitLists.Row row, String operation, Said form) {
        Frame frame = frames.of(Tab.SEASON);
        return Pages.newclaim(
                frame,
                row.id(),
                row.homeId(),
                row.street() + ", " + row.city(),
                choices.used(row.id(), frame.locale()),
                choices.machines(row.homeId()),
                operation,
                form);
    }
}
