package changeover.contracts.takeover;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/** A running shop is taken over on one day; once agreements were taken over on it, it stays. */
@ApplicationScoped
public class TakeOver {

    /** Minutes in which a machine's last times are read on the spot, until the business says otherwise. */
    public static final int USUAL_READING_MINUTES = 5;

    @Inject
    EntityManager rows;

    @Inject
    Today today;

    @Inject
    Event<TakeOverMoved> moved;

    public Optional<LocalDate> day() {
        return rows.createNativeQuery("select day from take_over", LocalDate.class)
                .getResultStream()
                .map(LocalDate.class::cast)
                .findFirst();
    }

    /** The day that was said, or today. */
    public LocalDate dayOrToday() {
        return day().orElseGet(today::day);
    }

    /** @throws changeover.contracts.words.Refused for another day than the one on which agreements were taken over */
    public void on(LocalDate day) {
        Optional<LocalDate> known = day();
        if (known.filter(day::equals).isPresent()) {
            return;
        }
        if (known.isPresent() && isUsed()) {
            throw Refusal.of("takeover.day-stays", Map.of("day", DayInWords.of(known.get())))
                    .at("takeOver")
                    .thrown();
        }
        rows.createNativeQuery("""
                        insert into take_over (day) values (:day)
                        on conflict on constraint one_take_over do update set day = excluded.day""").setParameter("day", day).executeUpdate();
        known.ifPresent(before -> moved.fire(new TakeOverMoved(before, day)));
    }

    /** What it takes at the first visit to read on one machine when its work was last done. */
    public int readingMinutes() {
        Optional<Integer> said = rows.createNativeQuery("select reading_minutes from take_over", Integer.class)
                .getResultStream()
                .map(Integer.class::cast)
                .findFirst();
        return said.orElse(USUAL_READING_MINUTES);
    }

    /** @param minutes of every machine that is read from now on */
    public void readIn(int minutes) {
        rows.createNativeQuery("update take_over set reading_minutes = :minutes where reading_minutes <> :minutes")
                .setParameter("minutes", minutes)
                .executeUpdate();
    }

    private boolean isUsed() {
        return (Boolean) rows.createNativeQuery("select exists (select from agreement_taken_over)", Boolean.class)
                .getSingleResult();
    }
}
