package changeover.web.api;

import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.scheduling.visits.VisitLists;
import changeover.scheduling.visits.VisitTask;
import changeover.scheduling.visits.Visits;
import changeover.web.session.OwnVisits;
import changeover.web.session.PaperAnswer;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Visits: listed, read with their checklist. A technician sees their own only. */
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

    @Inject
    VisitLists lists;

    @Inject
    Visits visits;

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
    OwnVisits own;

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
        return own.found(id);
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
