package changeover.web.field;

import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.closeout.CloseOut;
import changeover.scheduling.closeout.DaySheet.TaskLine;
import changeover.scheduling.closeout.Reading;
import changeover.scheduling.closeout.Readings;
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
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** One task a screen: what may hurt, what is read, what became of it, what was found and used. */
@Path("/{slug}/field/visits/{id}/tasks/{task}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office", "technician"})
public class TaskPages {

    @CheckedTemplate(basePath = "field")
    static class Pages {
        static native TemplateInstance task(
                Frame frame, TaskView view, Said form, String made, List<InstrumentChoices.Choice> instruments);

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
    TaskViews views;

    @Inject
    Readings readings;

    @Inject
    InstrumentChoices instruments;

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
    public TemplateInstance task(@PathParam("id") UUID id, @PathParam("task") UUID task) {
        VisitLists.Row row = visits.found(id);
        StopLines.Lines lines = checklists.lines(row);
        Frame frame = frames.of(null);
        TaskLine line = line(lines, task);
        return Pages.task(
                frame,
                views.of(row, lines, line, frame),
                Said.filled(TaskForm.known(
                        line, new SheetSoFar(lines.said()), frame.locale().getLanguage())),
                UUID.randomUUID().toString(),
                instruments.of(line, frame));
    }

    /** Keeps the task and goes on; a reading that is off, said for the first time, is looked at once more first. */
    @POST
    public Response keep(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @PathParam("task") UUID task,
            MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    VisitLists.Row row = visits.found(id);
                    StopLines.Lines before = checklists.lines(row);
                    TaskLine line = line(before, task);
                    var sheet = new SheetSoFar(before.said());
                    var telling = new Telling(typed.id("made"), clock.instant());
                    boolean measured = new TaskForm(typed, line, sheet).read(telling);
                    typed.understood();
                    telling.tell(closeOut, id, current.person());
                    String visit = "/" + slug + "/field/visits/" + id;
                    Optional<UUID> stop = stopped.by(typed, row);
                    if (stop.isPresent()) {
                        return SaidOnce.at(visit + "/stopped/" + stop.get(), "stopped");
                    }
                    return typed.ticked("photo")
                            ? visit + "/tasks/" + task + "/photos"
                            : next(visit, id, task, measured);
                },
                refusals -> {
                    VisitLists.Row row = visits.found(id);
                    StopLines.Lines lines = checklists.lines(row);
                    Frame frame = frames.of(null);
                    return Pages.task(
                            frame,
                            views.of(row, lines, line(lines, task), frame),
                            Said.again(typed, refusals, frame.locale()),
                            Telling.form(typed).toString(),
                            instruments.of(line(lines, task), frame));
                });
    }

    private String next(String visit, UUID id, UUID task, boolean measured) {
        StopLines.Lines now = checklists.lines(visits.found(id));
        boolean said = !new SheetSoFar(now.said()).findings(task).isEmpty();
        if (measured && !said && isOff(id, task)) {
            return SaidOnce.at(visit + "/tasks/" + task, "reading-off");
        }
        List<VisitView.Line> steps = checklists.tasks(now, frames.locale());
        VisitView.Line here = steps.stream()
                .filter(step -> step.id().equals(task))
                .findFirst()
                .orElseThrow(NotFoundException::new);
        VisitView.Line next = TaskViews.next(steps, here);
        return next == null ? visit + "/closure" : visit + "/tasks/" + next.id();
    }

    private boolean isOff(UUID visit, UUID task) {
        return readings.ofVisit(visit).stream()
                .filter(one -> one.visitTaskId().equals(task))
                .anyMatch(Reading::actOn);
    }

    /** The task among the visit's own, not found when it is another visit's. */
    static TaskLine line(StopLines.Lines lines, UUID task) {
        return lines.tasks().stream()
                .filter(one -> one.id().equals(task))
                .findFirst()
                .orElseThrow(NotFoundException::new);
    }
}
