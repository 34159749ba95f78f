package changeover.scheduling.calls;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Who is on call on which days in the current business. One person a day: the database refuses the second. */
@ApplicationScoped
public class OnCalls {

    /** The night of a turn's last day runs into the next morning. */
    private static final LocalTime NIGHT_IS_OVER = LocalTime.NOON;

    @Inject
    EntityManager rows;

    @Inject
    People people;

    public OnCall give(UUID personId, Window days) {
        var _ = people.of(personId)
                .filter(member -> member.worksOn(days.from()) && member.worksOn(days.last()))
                .orElseThrow(() -> Refusal.of("on-call.nobody").at("person").thrown());
        OnCall turn = OnCall.of(personId, days);
        rows.persist(turn);
        rows.flush();
        return turn;
    }

    /** False when there is none of that id here. */
    public boolean takeAway(UUID id) {
        OnCall found = rows.find(OnCall.class, id);
        if (found == null) {
            return false;
        }
        rows.remove(found);
        rows.flush();
        return true;
    }

    /** Every turn that meets the days, the earliest first. */
    public List<OnCall> in(Window days) {
        return rows.createQuery(
                        "from OnCall where fromDay < :until and untilDay > :from order by fromDay", OnCall.class)
                .setParameter("from", days.from())
                .setParameter("until", days.until())
                .getResultList();
    }

    /** Who is on call on the day; empty while nobody was named. */
    public Optional<Membership> on(LocalDate day) {
        return in(Window.ofDay(day)).stream().findFirst().flatMap(turn -> people.of(turn.personId()));
    }

    /** Whether the person's telephone rings at that hour: on a day of a turn, or in the morning after its last. */
    public boolean rings(UUID personId, LocalDateTime at) {
        LocalDate first =
                at.toLocalTime().isBefore(NIGHT_IS_OVER) ? at.toLocalDate().minusDays(1) : at.toLocalDate();
        return in(Window.ofDays(first, at.toLocalDate())).stream()
                .anyMatch(turn -> turn.personId().equals(personId));
    }
}
