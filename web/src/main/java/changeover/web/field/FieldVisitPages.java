package changeover.web.field;

import changeover.billing.estimates.Estimates;
import changeover.billing.serving.Servings;
import changeover.billing.serving.Word;
import changeover.contracts.customers.AccessCodes;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.closeout.CloseOut;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.stopped.StopLists;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.OwnVisits;
import changeover.web.session.Said;
import changeover.web.session.StopInWords;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.util.List;
import java.util.UUID;

/** One visit at the door: how to get in, what can hurt, who is there, what is to be done. */
@Path("/{slug}/field/visits/{id}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office", "technician"})
public class FieldVisitPages {

    /**
     * What the office decided where something is unpaid.
     *
     * @param word serve, ask, not; empty where nothing is
     */
    public record Unpaid(String word, String phone, String dial) {}

    /** What the customer said yes to: how much of what, and no amount. */
    public record Accepted(String label, String words, List<String> lines) {}

    @CheckedTemplate(basePath = "field")
    static class Pages {
        static native TemplateInstance visit(
                Frame frame,
                VisitView view,
                Unpaid unpaid,
                List<Accepted> accepted,
                List<FieldEstimates.Row> estimates,
                List<FieldParts.Ordered> ordered,
                List<StopInWords.View> stops,
                List<AccessCodes.Shown> shown,
                Said form,
                UUID made);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Desk desk;

    @Inject
    OwnVisits visits;

    @Inject
    VisitViews views;

    @Inject
    AccessCodes codes;

    @Inject
    CloseOut closeOut;

    @Inject
    CurrentTenant current;

    @Inject
    Clock clock;

    @Inject
    Servings servings;

    @Inject
    Estimates estimates;

    @Inject
    FieldEstimates written;

    @Inject
    FieldParts parts;

    @Inject
    StopLists stops;

    @Inject
    StopInWords stopWords;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance visit(@PathParam("id") UUID id) {
        return page(visits.found(id), List.of(), Said.blank());
    }

    /** Keys and codes are said on the visit's day, in the answer itself, and each reading is kept. */
    @POST
    @Path("codes")
    public Response codes(@PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.look(
                () -> {
                    VisitLists.Row row = visits.found(id);
                    String reason = typed.text("reason", 200);
                    if (row.how() != null || !today.day().equals(row.day())) {
                        typed.refuse(Refusal.of("field.codes-day"));
                    }
                    typed.understood();
                    return page(row, codes.read(row.homeId(), reason), Said.blank());
                },
                refusals -> page(visits.found(id), List.of(), Said.again(typed, refusals, frames.locale())));
    }

    /** The technician has come; the first task is next. */
    @POST
    @Path("arrival")
    public Response arrive(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    VisitLists.Row row = visits.found(id);
                    UUID made = typed.id("made");
                    typed.understood();
                    var telling = new Telling(made, clock.instant());
                    telling.add(new Operation.Arrive(), field -> "");
                    telling.tell(closeOut, id, current.person());
                    VisitView.Line next = views.of(row, frames.of(null)).next();
                    String visit = "/" + slug + "/field/visits/" + id;
                    return next == null ? visit + "/closure" : visit + "/tasks/" + next.id();
                },
                refusals -> page(visits.found(id), List.of(), Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(VisitLists.Row row, List<AccessCodes.Shown> shown, Said form) {
        Frame frame = frames.of(null);
        return Pages.visit(
                frame,
                views.of(row, frame),
                unpaid(row, frame),
                accepted(row, frame),
                written.rows(row.id(), frame),
                parts.ordered(row.id(), frame),
                stopWords.of(stops.openIn(List.of(row.homeId())).getOrDefault(row.homeId(), List.of()), frame),
                shown,
                form,
                UUID.randomUUID());
    }

    private List<Accepted> accepted(VisitLists.Row row, Frame frame) {
        return estimates.ofVisit(row.id()).stream()
                .filter(one -> one.visits().contains(row.id()))
                .map(one -> new Accepted(
                        one.label().orElseThrow(),
                        one.words(),
                        estimates.sum(one).lines().stream()
                                .filter(line -> !line.kind().equals("travel"))
                                .map(line ->
                                        line.quantity().stripTrailingZeros().toPlainString() + " × "
                                                + line.words().in(frame.locale()))
                                .toList()))
                .toList();
    }

    /** The word alone; how much it is stays at the office. */
    private Unpaid unpaid(VisitLists.Row row, Frame frame) {
        Word word = row.how() != null
                ? null
                : servings.at(List.of(row.homeId()), frame.today()).get(row.homeId());
        String phone = businesses.profile().facts().phone();
        String shown = phone == null ? "" : phone;
        return new Unpaid(word == null ? "" : word.code(), shown, shown.replaceAll("[^0-9+]", ""));
    }
}
