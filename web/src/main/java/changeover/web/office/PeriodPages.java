package changeover.web.office;

import changeover.billing.ledger.PeriodEnd;
import changeover.billing.periods.Periods;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
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
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The days that are closed for the accounts; only the owner opens them again, with a reason. */
@Path("/{slug}/money/periods")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class PeriodPages {

    /** A closing in words; {@code why} is empty while it stands. */
    public record Row(
            UUID id,
            String field,
            String until,
            String on,
            String by,
            boolean stands,
            String why,
            String reopenedOn,
            String reopenedBy) {}

    /** @param wrong the closing whose reopening was refused, or null */
    public record View(
            String closed, List<Row> rows, @Nullable UUID wrong) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance periods(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Today today;

    @Inject
    Periods periods;

    @Inject
    PeriodEnd ends;

    @Inject
    People people;

    @GET
    @Transactional
    public TemplateInstance list() {
        LocalDate last = today.day().withDayOfMonth(1).minusDays(1);
        return page(Said.filled(Map.of("until", last.toString())), null);
    }

    @POST
    public Response close(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    LocalDate until = typed.day("until");
                    typed.understood();
                    ends.close(until);
                    return SaidOnce.at("/" + slug + "/money/periods", "period-closed");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale()), null));
    }

    @POST
    @Path("{id}/reopening")
    @RolesAllowed("owner")
    public Response reopen(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    if (periods.all().stream().noneMatch(one -> one.id().equals(id))) {
                        throw new NotFoundException();
                    }
                    String why = typed.text("why", 300);
                    typed.understood();
                    periods.reopen(id, why);
                    return SaidOnce.at("/" + slug + "/money/periods", "period-reopened");
                },
                (List<Refusal> refusals) -> page(Said.again(typed, refusals, frames.locale()), id));
    }

    private TemplateInstance page(Said form, @Nullable UUID wrong) {
        Frame frame = frames.of(Tab.MONEY);
        String closed = periods.closedUntil().map(frame::inWords).orElse("");
        List<Row> rows = periods.all().stream()
                .map(one -> new Row(
                        one.id(),
                        "why-" + one.id(),
                        frame.inWords(one.until()),
                        frame.brief(one.on()),
                        name(one.by()),
                        one.stands(),
                        one.why() == null ? "" : one.why(),
                        one.reopenedOn() == null ? "" : frame.brief(one.reopenedOn()),
                        name(one.reopenedBy())))
                .toList();
        return Pages.periods(frame, new View(closed, rows, wrong), form);
    }

    private String name(@Nullable UUID person) {
        return person == null ? "" : people.of(person).map(Membership::name).orElse("");
    }
}
