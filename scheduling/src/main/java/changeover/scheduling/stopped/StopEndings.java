package changeover.scheduling.stopped;

import changeover.contracts.tenants.Today;
import changeover.scheduling.closeout.Findings;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A stop ends once, by a right that is written with it; the finding that began it is put right with it. */
@ApplicationScoped
class StopEndings {

    /**
     * By which right it ends: a ticket of a person here, or a paper of a partner.
     *
     * @param until null for one that does not end
     */
    record Right(
            String ticket,
            @Nullable String number,
            @Nullable LocalDate until,
            @Nullable UUID partner,
            @Nullable UUID paper) {}

    @Inject
    EntityManager rows;

    @Inject
    Findings findings;

    @Inject
    Today today;

    @Inject
    Event<StopEnded> ended;

    /** @param by who says so, or writes it down for a partner */
    void write(MachineStop found, StopEnd how, Right right, LocalDate day, String done, UUID by) {
        rows.createNativeQuery("""
                        insert into back_in_service (stop_id, how, person_id, ticket_kind, ticket_number, ticket_until, day, at,
                          done, partner_id, paper_id)
                        values (:stop, :how, :person, :kind, cast(:number as text), cast(:until as date), :day, :at, :done,
                          cast(:partner as uuid), cast(:paper as uuid))
                        """)
                .setParameter("stop", found.id())
                .setParameter("how", how.code())
                .setParameter("person", by)
                .setParameter("kind", right.ticket())
                .setParameter("number", right.number())
                .setParameter("until", text(right.until()))
                .setParameter("day", day)
                .setParameter("at", today.now())
                .setParameter("done", done)
                .setParameter("partner", text(right.partner()))
                .setParameter("paper", text(right.paper()))
                .executeUpdate();
        UUID finding = found.findingId();
        if (finding != null) {
            findings.ended(finding, day, done, by);
        }
        ended.fire(new StopEnded(found.id(), how));
    }

    private static @Nullable String text(@Nullable Object value) {
        return value == null ? null : value.toString();
    }
}
