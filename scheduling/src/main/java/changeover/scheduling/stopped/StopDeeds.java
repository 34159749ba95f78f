package changeover.scheduling.stopped;

import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Ticket;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.scheduling.closeout.Findings;
import changeover.scheduling.stopped.HeatAnswer.Called;
import changeover.scheduling.stopped.MachineStop.Owed;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What is done about a stopped machine: its duties, the heat of the night, and its end by whoever holds the ticket. */
@ApplicationScoped
public class StopDeeds {

    @Inject
    EntityManager rows;

    @Inject
    StopLists lists;

    @Inject
    People people;

    @Inject
    Findings findings;

    @Inject
    Today today;

    @Inject
    Event<StopEnded> ended;

    /** A duty is done: by whom, on which day. Each once. */
    public void done(UUID stop, String code, String who, LocalDate day, @Nullable String words) {
        MachineStop found = found(stop);
        var checks = new Checks();
        String by = checks.line("who", who);
        String said = checks.note("words", words);
        checks.refuseIf(day.isBefore(found.day()) || day.isAfter(today.day()), "day", "stopped.duty-day");
        Optional<Owed> owed = found.owed(code);
        checks.refuseIf(owed.isEmpty(), "code", "stopped.duty-unknown");
        checks.refuseIf(owed.filter(one -> one.done() != null).isPresent(), "code", "stopped.duty-done");
        checks.orRefuse();
        rows.createNativeQuery("insert into stop_duty_done (stop_id, code, who, day, at, words)"
                        + " values (:stop, :code, :who, :day, :at, cast(:words as text))")
                .setParameter("stop", stop)
                .setParameter("code", code)
                .setParameter("who", by)
                .setParameter("day", day)
                .setParameter("at", today.now())
                .setParameter("words", said)
                .executeUpdate();
    }

    /** Somebody says whether it is the only heat. A later answer stands beside the earlier one and counts. */
    public void heat(UUID stop, HeatAnswer answer, UUID by) {
        if (!found(stop).isOpen()) {
            throw Refusal.of("constraint.a_stop_ends_once").thrown();
        }
        List<Refusal> refusals = answer.refusals();
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        rows.createNativeQuery("""
                        insert into stop_heat (stop_id, person_id, at, only_heat, freezing, tonight, office_who, office_at,
                          customer_who, customer_at)
                        values (:stop, :person, :at, :only, :freezing, cast(:tonight as text), cast(:office as text),
                          cast(:officeAt as timestamptz), cast(:customer as text), cast(:customerAt as timestamptz))
                        """)
                .setParameter("stop", stop)
                .setParameter("person", by)
                .setParameter("at", today.now())
                .setParameter("only", answer.onlyHeat())
                .setParameter("freezing", answer.freezing())
                .setParameter("tonight", answer.tonight())
                .setParameter("office", who(answer.office()))
                .setParameter("officeAt", at(answer.office()))
                .setParameter("customer", who(answer.customer()))
                .setParameter("customerAt", at(answer.customer()))
                .executeUpdate();
    }

    /**
     * It may be used again, or no longer stands there: only the person who says so, with the ticket in force today.
     *
     * @param done what was done, in words
     * @param by the person who says so
     */
    public void end(UUID stop, StopEnd how, String done, UUID by) {
        MachineStop found = found(stop);
        if (!found.isOpen()) {
            throw Refusal.of("constraint.a_stop_ends_once").thrown();
        }
        Ticket ticket = ticket(found.ticket(), by)
                .orElseThrow(() -> Refusal.of(
                                "closeout.restore-ticket", Map.of("ticket", RestoringTicket.wording(found.ticket())))
                        .thrown());
        var checks = new Checks();
        String said = checks.note("done", done);
        checks.refuseIf(said == null, "done", "stopped.what-was-done");
        checks.orRefuse();
        rows.createNativeQuery("""
                        insert into back_in_service (stop_id, how, person_id, ticket_kind, ticket_number, ticket_until, day, at,
                          done)
                        values (:stop, :how, :person, :kind, cast(:number as text), cast(:until as date), :day, :at, :done)
                        """)
                .setParameter("stop", stop)
                .setParameter("how", how.code())
                .setParameter("person", by)
                .setParameter("kind", ticket.kind())
                .setParameter("number", ticket.number().orElse(null))
                .setParameter(
                        "until", ticket.expiresOn().map(LocalDate::toString).orElse(null))
                .setParameter("day", today.day())
                .setParameter("at", today.now())
                .setParameter("done", said)
                .executeUpdate();
        UUID finding = found.findingId();
        if (finding != null && said != null) {
            findings.ended(finding, said, by);
        }
        ended.fire(new StopEnded(stop, how));
    }

    /** Whether the person holds the ticket today. */
    public boolean mayEnd(MachineStop stop, UUID person) {
        return ticket(stop.ticket(), person).isPresent();
    }

    private Optional<Ticket> ticket(String kind, UUID person) {
        LocalDate day = today.day();
        return people.ticketsOf(person).stream()
                .filter(ticket -> ticket.kind().equals(kind) && ticket.holdsOn(day))
                .findFirst();
    }

    private MachineStop found(UUID stop) {
        return lists.find(stop).orElseThrow(() -> Refusal.of("stopped.unknown").thrown());
    }

    private static @Nullable String who(@Nullable Called called) {
        return called == null ? null : called.who();
    }

    private static @Nullable String at(@Nullable Called called) {
        return Optional.ofNullable(called)
                .map(Called::at)
                .map(Instant::toString)
                .orElse(null);
    }
}
