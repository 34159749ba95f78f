package changeover.web.field;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.closeout.CloseOut;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.closeout.StopLines;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Desk;
import changeover.web.session.FindingTyped;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.OrderChoices;
import changeover.web.session.OwnVisits;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
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
import java.util.Locale;
import java.util.Map;
import java.util.UUID;

/** What was found at a visit, whatever its checklist holds: a call has none, and something is found there all the same. */
@Path("/{slug}/field/visits/{id}/findings")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office", "technician"})
public class FindingPages {

    /** @param found everything that was found at the visit, with a task or without */
    public record View(
            UUID visit,
            String home,
            boolean open,
            List<TaskView.Kept> found,
            List<TaskView.Choice> sentences,
            List<OrderChoices.Choice> machines) {}

    @CheckedTemplate(basePath = "field")
    static class Pages {
        static native TemplateInstance finding(Frame frame, View view, Said form, String made);

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
    OwnCatalogue catalogue;

    @Inject
    OrderChoices choices;

    @Inject
    JustStopped stopped;

    @Inject
    CloseOut closeOut;

    @Inject
    CurrentTenant current;

    @Inject
    Clock clock;

    @GET
    @Transactional
    public TemplateInstance write(@PathParam("id") UUID id) {
        return page(
                visits.found(id),
                Said.filled(Map.of(
                        "level",
                        FindingTyped.NOTHING,
                        "language",
                        frames.locale().getLanguage())),
                UUID.randomUUID().toString());
    }

    /** Something was found, or something said before is taken back. */
    @POST
    public Response keep(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    VisitLists.Row row = visits.found(id);
                    var sheet = new SheetSoFar(checklists.lines(row).said());
                    var telling = new Telling(typed.id("made"), clock.instant());
                    List<String> back = typed.each("back");
                    sheet.each("finding").stream()
                            .filter(said -> back.contains(said.id().toString()))
                            .forEach(said -> telling.add(new Operation.TakeBack(said.id()), _ -> "text"));
                    FindingTyped.read(typed, typed.idOrNone("machine"), null)
                            .ifPresent(found -> telling.add(found, FindingTyped::field));
                    typed.understood();
                    telling.tell(closeOut, id, current.person());
                    String visit = "/" + slug + "/field/visits/" + id;
                    return stopped.by(typed, row)
                            .map(stop -> SaidOnce.at(visit + "/stopped/" + stop, "stopped"))
                            .orElseGet(() -> SaidOnce.at(visit + "/findings", "kept"));
                },
                refusals -> page(
                        visits.found(id),
                        Said.again(typed, refusals, frames.locale()),
                        Telling.form(typed).toString()));
    }

    private TemplateInstance page(VisitLists.Row row, Said form, String made) {
        Frame frame = frames.of(null);
        Locale locale = frame.locale();
        Catalogue trade = catalogue.catalogue();
        StopLines.Lines lines = checklists.lines(row);
        return Pages.finding(
                frame,
                new View(
                        row.id(),
                        row.street() + ", " + row.city(),
                        row.how() == null,
                        new SheetSoFar(lines.said())
                                .each("finding").stream()
                                        .map(said -> TaskViews.finding(said, trade, locale))
                                        .toList(),
                        trade.sentences().stream()
                                .map(one -> new TaskView.Choice(
                                        one.code(), one.wording().in(locale)))
                                .toList(),
                        choices.machines(row.homeId())),
                form,
                made);
    }
}
