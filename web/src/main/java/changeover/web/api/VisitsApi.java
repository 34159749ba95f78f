package changeover.web.api;

import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.visits.VisitLists;
import changeover.scheduling.visits.VisitTask;
import changeover.scheduling.visits.Visits;
import changeover.web.session.Once;
import changeover.web.session.PaperAnswer;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Visits: listed, read with their checklist, given a day. A technician sees their own only. */
@Path("/api/v1/{slug}/visits")
@RolesAllowed({"owner", "office", "technician"})
public class VisitsApi {

    /** A visit with its checklist. */
    public record VisitDocument(VisitLists.Row visit, List<TaskDocument> tasks) {}

    /**
     * A line of the checklist with why it is there: between which days, by which rule, on what basis, from which source.
     *
     * @param latest the last day, in
     */
    public record TaskDocument(
            UUID id,
            @Nullable UUID unit,
            String task,
            String words,
            String reason,
            LocalDate earliest,
            LocalDate latest,
            String basis,
            @Nullable String source,
            String act,
            @Nullable String ticket,
            int minutes) {}

    /** What was given, and what whoever gave it should know. */
    public record AppointmentDocument(
            UUID visit, UUID technician, LocalDate day, LocalTime starts, LocalTime ends, List<String> notes) {}

    @Inject
    VisitLists lists;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    DocumentsToMake papers;

    @Inject
    SecurityIdentity identity;

    @Inject
    CurrentTenant current;

    @Inject
    Today today;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    Tongue tongue;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** @param until the last day; both days default to the coming four weeks */
    @GET
    @Transactional
    public List<VisitLists.Row> list(
            @Nullable @QueryParam("from") String from,
            @Nullable @QueryParam("until") String until,
            @QueryParam("skip") @DefaultValue("0") int skip,
            @QueryParam("count") @DefaultValue("200") int count) {
        LocalDate first = from == null ? today.day() : AskedInQuery.day("from", from);
        LocalDate last = until == null ? first.plusDays(27) : AskedInQuery.day("until", until);
        if (last.isBefore(first) || last.isAfter(first.plusYears(3))) {
            throw changeover.contracts.words.Refusal.of("visits.days")
                    .at("until")
                    .thrown();
        }
        return lists.between(
                Window.ofDays(first, last), only(), Math.clamp(skip, 0, 1_000_000), Math.clamp(count, 1, 1000));
    }

    @GET
    @Path("{id}")
    @Transactional
    public VisitDocument one(@PathParam("id") UUID id) {
        OwnCatalogue.Own own = catalogue.read();
        return new VisitDocument(
                seen(id),
                visits.tasksOf(id).stream().map(task -> task(task, own)).toList());
    }

    /** Gives a day or moves it: {@code technician, day, starts}, optionally {@code ends}. */
    @POST
    @Path("{id}/appointment")
    @RolesAllowed({"owner", "office"})
    public Response give(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "appointment " + id + body, () -> {
            seen(id);
            Asked asked = Asked.of(body, json);
            UUID technician = asked.id("technician");
            LocalDate day = asked.day("day");
            LocalTime starts = asked.time("starts");
            LocalTime ends = asked.value("ends") == null ? null : asked.time("ends");
            asked.nothingElse().understood();
            var given = appointments.give(id, new Appointments.Slot(technician, day, starts, ends));
            var appointment = given.appointment();
            return Once.Answer.done(new AppointmentDocument(
                    id,
                    appointment.technicianId(),
                    appointment.day(),
                    appointment.starts(),
                    appointment.ends(),
                    given.notes().stream().map(note -> note.in(tongue.locale())).toList()));
        });
    }

    /** The report of a closed visit, made now if it was not yet. */
    @GET
    @Path("{id}/report.pdf")
    @Produces("application/pdf")
    public Response report(@PathParam("id") UUID id) {
        current.run(current.id(), current.person(), () -> seen(id));
        var paper = papers.newest(current.id(), PaperKind.REPORT, id).orElseThrow(NotFoundException::new);
        return PaperAnswer.of(paper);
    }

    private VisitLists.Row seen(UUID id) {
        UUID only = only();
        return lists.one(id)
                .filter(row -> only == null || only.equals(row.technicianId()))
                .orElseThrow(NotFoundException::new);
    }

    private @Nullable UUID only() {
        return identity.hasRole("technician") ? current.person() : null;
    }

    private TaskDocument task(VisitTask task, OwnCatalogue.Own own) {
        return new TaskDocument(
                task.id(),
                task.equipmentId().orElse(null),
                task.taskCode(),
                task.wording().in(tongue.locale()),
                task.reason().in(tongue.locale()),
                task.due().from(),
                task.due().last(),
                task.basis(),
                task.grounds(own).source(),
                task.act(),
                task.ticket().orElse(null),
                task.minutes());
    }
}
