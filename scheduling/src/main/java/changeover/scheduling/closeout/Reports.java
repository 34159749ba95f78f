package changeover.scheduling.closeout;

import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.scheduling.closeout.ReportFacts.Correction;
import changeover.scheduling.closeout.ReportFacts.NextVisit;
import changeover.scheduling.closeout.ReportFacts.PartFact;
import changeover.scheduling.closeout.ReportFacts.TaskFact;
import changeover.scheduling.closeout.ReportFacts.Technician;
import changeover.scheduling.closeout.ReportFacts.TicketFact;
import changeover.scheduling.partners.GivenVisit;
import changeover.scheduling.partners.GivenVisits;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Gathers what the service report of a closed visit prints. */
@ApplicationScoped
public class Reports {

    @Inject
    EntityManager rows;

    @Inject
    VisitsAtHand visits;

    @Inject
    Closures closures;

    @Inject
    GivenVisits given;

    @Inject
    Readings readings;

    @Inject
    Findings findings;

    @Inject
    Coming coming;

    @Inject
    Parts parts;

    @Inject
    People people;

    @Inject
    Businesses businesses;

    /** @throws changeover.contracts.words.Refused when there is no such visit, or it is not closed */
    public ReportFacts of(UUID visitId) {
        VisitAtHand visit = visits.of(visitId);
        Closure closure = closures.of(visitId)
                .orElseThrow(() -> Refusal.of("closeout.not-closed").thrown());
        NextVisit next = coming.next(visit, closure.day()).orElse(null);
        LocalDate until =
                next == null ? closure.day().plusYears(1) : Objects.requireNonNullElse(next.day(), next.windowLast());
        List<TaskFact> tasks = tasks(visit);
        return new ReportFacts(
                visitId,
                visit.homeId(),
                closure.version(),
                visit.kind(),
                closure.day(),
                clock(closure.arrivedAt()),
                clock(closure.leftAt()),
                closure.minutes(),
                technician(closure),
                closure.receivedBy().orElse(null),
                closure.nobodyWhy().orElse(null),
                closure.householdNote().orElse(null),
                correction(visitId),
                tasks,
                readings.facts(visit),
                findings.facts(visit),
                parts(visit),
                coming.household(visit, closure.day(), until),
                next,
                cautions(visit, tasks));
    }

    private @Nullable LocalTime clock(Optional<Instant> at) {
        return at.map(instant ->
                        LocalTime.ofInstant(instant, businesses.current().zone()))
                .orElse(null);
    }

    private Technician technician(Closure closure) {
        UUID person = closure.technicianId();
        String partner =
                given.of(closure.visitId()).map(GivenVisit::partnerName).orElse(null);
        if (partner != null) {
            return new Technician(person, partner, List.of());
        }
        List<TicketFact> tickets = people.ticketsOf(person).stream()
                .filter(ticket -> ticket.holdsOn(closure.day()))
                .map(ticket -> new TicketFact(ticket.kind(), ticket.number().orElse(null)))
                .toList();
        return new Technician(person, name(person), tickets);
    }

    private String name(UUID person) {
        return people.of(person).map(Membership::name).orElse("");
    }

    private @Nullable Correction correction(UUID visitId) {
        List<Amendment> all = closures.amendmentsOf(visitId);
        if (all.isEmpty()) {
            return null;
        }
        Amendment last = all.getLast();
        return new Correction(last.version(), last.at(), name(last.personId()), last.why());
    }

    private List<TaskFact> tasks(VisitAtHand visit) {
        Map<UUID, TaskOutcome> outcomes = rows.createQuery("from TaskOutcome where visitId = :visit", TaskOutcome.class)
                .setParameter("visit", visit.id())
                .getResultStream()
                .collect(Collectors.toMap(TaskOutcome::visitTaskId, Function.identity()));
        return visit.tasks().values().stream()
                .filter(task -> outcomes.containsKey(task.id()))
                .map(task -> task(task, visit, Objects.requireNonNull(outcomes.get(task.id()))))
                .toList();
    }

    private static TaskFact task(TaskAtHand task, VisitAtHand visit, TaskOutcome outcome) {
        return new TaskFact(
                task.id(),
                task.equipment(),
                visit.machineName(task.equipment()),
                task.code(),
                task.wording(),
                Outcome.ofCode(outcome.outcome()).orElse(Outcome.DONE),
                outcome.reason().orElse(null));
    }

    private List<PartFact> parts(VisitAtHand visit) {
        return rows.createQuery("from PartUsed where visitId = :visit order by id", PartUsed.class)
                .setParameter("visit", visit.id())
                .getResultStream()
                .map(used -> part(used, visit, parts.everKnown(used.partCode())))
                .toList();
    }

    private static PartFact part(PartUsed used, VisitAtHand visit, Optional<KnownPart> known) {
        UUID machine = used.equipmentId().orElse(null);
        return new PartFact(
                used.partCode(),
                known.map(KnownPart::name).orElse(new Wording(used.partCode(), used.partCode())),
                known.map(KnownPart::unit).orElse("H87"),
                new BigDecimal(used.quantity().stripTrailingZeros().toPlainString()),
                machine,
                visit.machineName(machine),
                used.why().orElse("plan"));
    }

    private static List<String> cautions(VisitAtHand visit, List<TaskFact> tasks) {
        return tasks.stream()
                .flatMap(task -> visit.task(task.id()).stream())
                .map(TaskAtHand::caution)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
    }
}
