package changeover.web.field;

import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.closeout.CloseOut;
import changeover.scheduling.closeout.DaySheet;
import changeover.scheduling.closeout.StopLines;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.OwnVisits;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.identity.SecurityIdentity;
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
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** The visit is closed: minutes, who received it or why nobody, a word for the household. */
@Path("/{slug}/field/visits/{id}/closure")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office", "technician"})
public class ClosurePages {

    /**
     * @param open the tasks without an outcome
     * @param paperDay the visit's day, where its hours are typed from paper; empty for whoever was there
     * @param unread whether the home is to be read and no machine was written down at this visit
     */
    public record View(
            UUID visit,
            String home,
            int minutes,
            boolean here,
            boolean over,
            List<VisitView.Line> open,
            int tasks,
            boolean unread,
            List<String> instruments,
            String paperDay) {}

    @CheckedTemplate(basePath = "field")
    static class Pages {
        static native TemplateInstance closure(Frame frame, View view, Said form, String made);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    OwnVisits visits;

    @Inject
    VisitViews checklists;

    @Inject
    InstrumentChoices instruments;

    @Inject
    Homes homes;

    @Inject
    CloseOut closeOut;

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    @Inject
    SecurityIdentity identity;

    @Inject
    Clock clock;

    @GET
    @Transactional
    public TemplateInstance closure(@PathParam("id") UUID id) {
        VisitLists.Row row = visits.found(id);
        var sheet = new SheetSoFar(checklists.lines(row).said());
        Map<String, String> known = new LinkedHashMap<>();
        known(known, sheet, "minutes", "minutes", "extra", "extraWhy");
        known(known, sheet, "received", "by", "nobodyWhy");
        known(known, sheet, "note", "text");
        return page(row, Said.filled(known), UUID.randomUUID().toString());
    }

    private static void known(Map<String, String> known, SheetSoFar sheet, String kind, String... fields) {
        sheet.last(kind).ifPresent(said -> {
            for (String field : fields) {
                known.put(field, SheetSoFar.text(said, field));
            }
        });
    }

    @POST
    public Response close(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    VisitLists.Row row = visits.found(id);
                    StopLines.Lines lines = checklists.lines(row);
                    Instant now = clock.instant();
                    PaperTimes paper = PaperTimes.of(
                                    typed,
                                    fromPaper() ? row.day() : null,
                                    businesses.current().zone(),
                                    now)
                            .orElse(null);
                    var telling = new Telling(typed.id("made"), paper == null ? now : paper.left());
                    new ClosureForm(
                                    typed,
                                    lines.tasks().stream()
                                            .map(DaySheet.TaskLine::id)
                                            .toList(),
                                    new SheetSoFar(lines.said()),
                                    paper)
                            .read(telling);
                    typed.understood();
                    telling.tell(closeOut, id, current.person());
                    return SaidOnce.at("/" + slug + "/field/visits/" + id, "visit-closed");
                },
                refusals -> page(
                        visits.found(id),
                        Said.again(typed, refusals, frames.locale()),
                        Telling.form(typed).toString()));
    }

    /** Whoever is no technician types what a technician wrote. */
    private boolean fromPaper() {
        return !identity.hasRole("technician");
    }

    private TemplateInstance page(VisitLists.Row row, Said form, String made) {
        Frame frame = frames.of(null);
        StopLines.Lines lines = checklists.lines(row);
        List<VisitView.Line> tasks = checklists.tasks(lines, frame.locale());
        return Pages.closure(
                frame,
                new View(
                        row.id(),
                        row.street() + ", " + row.city(),
                        row.minutes(),
                        new SheetSoFar(lines.said()).last("arrive").isPresent(),
                        row.how() != null,
                        tasks.stream().filter(task -> task.outcome().isEmpty()).toList(),
                        tasks.size(),
                        homes.get(row.homeId()).filter(Home::toBeRead).isPresent()
                                && new SheetSoFar(lines.said()).each("machine").isEmpty(),
                        instruments.over(lines, frame.today(), frame),
                        fromPaper() && row.day() != null ? frame.inWords(row.day()) : ""),
                form,
                made);
    }
}
