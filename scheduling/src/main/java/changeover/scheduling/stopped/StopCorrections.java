package changeover.scheduling.stopped;

import changeover.contracts.tenants.Today;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.UUID;

/** What the office knows better of a stop: what else has to be done, and which ticket may put it back. What was said stays. */
@ApplicationScoped
public class StopCorrections {

    @Inject
    EntityManager rows;

    @Inject
    StopLists lists;

    @Inject
    Today today;

    /**
     * Something else has to be done.
     *
     * @param office whether the office has to do it; else whoever stopped it
     * @param due its last day
     * @param source what it rests on: a rule, a person, an order of somebody who may give one
     */
    public record NewDuty(String words, boolean office, LocalDate due, String source) {}

    /** The same id again changes nothing. */
    public void add(UUID id, UUID stop, NewDuty duty, UUID by) {
        MachineStop found = found(stop);
        if (found.added().stream().anyMatch(one -> one.code().equals(id.toString()))) {
            return;
        }
        var checks = new Checks();
        String words = checks.note("words", duty.words());
        String source = checks.note("source", duty.source());
        checks.refuseIf(words == null, "words", "stopped.duty-words");
        checks.refuseIf(source == null, "source", "stopped.duty-source");
        checks.refuseIf(duty.due().isBefore(found.day()), "due", "stopped.duty-due");
        checks.orRefuse();
        rows.createNativeQuery("insert into stop_duty (id, stop_id, person_id, at, words, office, due, source)"
                        + " values (:id, :stop, :person, :at, :words, :office, :due, :source)"
                        + " on conflict (tenant_id, id) do nothing")
                .setParameter("id", id)
                .setParameter("stop", stop)
                .setParameter("person", by)
                .setParameter("at", today.now())
                .setParameter("words", words)
                .setParameter("office", duty.office())
                .setParameter("due", duty.due())
                .setParameter("source", source)
                .executeUpdate();
    }

    /** Another ticket is the one that may put it back, with why; what was done for the one before stays done. */
    public void ticket(UUID stop, String ticket, String why, UUID by) {
        MachineStop found = found(stop);
        if (!found.isOpen()) {
            throw Refusal.of("constraint.a_stop_ends_once").thrown();
        }
        var checks = new Checks();
        String said = checks.note("why", why);
        checks.refuseIf(said == null, "why", "stopped.ticket-why");
        checks.refuseIf(!RestoringTicket.TICKETS.contains(ticket), "ticket", "stopped.ticket-which");
        checks.refuseIf(found.ticket().equals(ticket), "ticket", "stopped.ticket-same");
        checks.orRefuse();
        rows.createNativeQuery("insert into stop_ticket (stop_id, ticket, why, person_id, at)"
                        + " values (:stop, :ticket, :why, :person, :at)")
                .setParameter("stop", stop)
                .setParameter("ticket", ticket)
                .setParameter("why", said)
                .setParameter("person", by)
                .setParameter("at", today.now())
                .executeUpdate();
    }

    private MachineStop found(UUID stop) {
        return lists.find(stop).orElseThrow(() -> Refusal.of("stopped.unknown").thrown());
    }
}
