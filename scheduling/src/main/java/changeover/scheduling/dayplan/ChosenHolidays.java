package changeover.scheduling.dayplan;

import changeover.contracts.calendar.Holiday;
import changeover.contracts.calendar.HolidayChoice;
import changeover.contracts.calendar.Holidays;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Which holidays of its place the current business keeps. */
@ApplicationScoped
public class ChosenHolidays {

    @Inject
    EntityManager rows;

    @Inject
    Businesses businesses;

    public HolidayChoice choice() {
        Map<Boolean, Set<String>> chosen = all().stream()
                .collect(Collectors.partitioningBy(
                        ChosenHoliday::isKept, Collectors.mapping(ChosenHoliday::holiday, Collectors.toSet())));
        return new HolidayChoice(chosen.getOrDefault(false, Set.of()), chosen.getOrDefault(true, Set.of()));
    }

    /**
     * Writes anew which are kept.
     *
     * @param offered the place's, of any year
     * @param kept codes of those that are kept
     */
    public void choose(Collection<Holiday> offered, Set<String> kept) {
        boolean easter = kept.contains(Holidays.GOOD_FRIDAY) || kept.contains(Holidays.EASTER_MONDAY);
        if (Holidays.leavesEasterToTheBusiness(businesses.current().place()) && !easter) {
            throw Refusal.of("roster.easter-day").at("kept").thrown();
        }
        all().forEach(rows::remove);
        rows.flush();
        Set<String> written = new HashSet<>();
        for (Holiday holiday : offered) {
            boolean keeps = kept.contains(holiday.code());
            if (keeps != holiday.isUsual() && written.add(holiday.code())) {
                rows.persist(ChosenHoliday.of(holiday.code(), keeps));
            }
        }
        rows.flush();
    }

    private List<ChosenHoliday> all() {
        return rows.createQuery("from ChosenHoliday", ChosenHoliday.class).getResultList();
    }
}
