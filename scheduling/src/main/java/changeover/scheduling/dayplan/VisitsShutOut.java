package changeover.scheduling.dayplan;

import changeover.contracts.calendar.Window;
import changeover.contracts.customers.HomesShut;
import changeover.contracts.customers.ShutTimes;
import changeover.scheduling.visits.GivenOut;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Visits of the current business whose homes are shut for some of their days. */
@ApplicationScoped
public class VisitsShutOut {

    private static final String IN_SEASON = """
            select v.id, s.from_day, s.until_day from visit v
              join """ + HomesShut.TIMES + """
             s on s.tenant_id = v.tenant_id and s.home_id = v.home_id and s.from_day < :until
              and (s.until_day is null or s.until_day > :from)
             where v.window_from < :until
               and not exists (select 1 from visit_ending e where e.tenant_id = v.tenant_id and e.visit_id = v.id)
            """;

    private static final String BOOKED = """
            select v.id, a.day, a.starts, m.name as technician from visit v
              join appointment a on a.tenant_id = v.tenant_id and a.visit_id = v.id
              left join membership m on m.tenant_id = a.tenant_id and m.person_id = a.technician_id
              join """ + HomesShut.TIMES + """
             s on s.tenant_id = v.tenant_id and s.home_id = v.home_id and s.from_day <= a.day
              and (s.until_day is null or s.until_day > a.day)
             where v.home_id = :home and a.day >= :today
               and not exists (select 1 from visit_ending e where e.tenant_id = v.tenant_id and e.visit_id = v.id)
             order by a.day, a.starts
            """;

    private static final String WITHOUT_A_DAY = """
            select v.id, v.window_from, v.window_until from visit v
             where v.home_id = :home and v.window_until > :today
               and not exists (select 1 from appointment a where a.tenant_id = v.tenant_id and a.visit_id = v.id)
               and not exists (select 1 from visit_ending e where e.tenant_id = v.tenant_id and e.visit_id = v.id)
               and """ + GivenOut.NOT + " order by v.window_until, v.id";

    /** A visit that has a day on which its home is shut. */
    public record Booked(
            UUID visit,
            LocalDate day,
            String starts,
            @Nullable String technician) {}

    /** A visit all of whose days the home is shut. */
    public record NoDayLeft(UUID visit, Window window) {}

    @Inject
    EntityManager rows;

    /** By visit; one whose home is open all the time is missing. */
    public Map<UUID, ShutTimes> inSeason(Window season) {
        List<Tuple> found = DayPlans.tuples(rows.createNativeQuery(IN_SEASON, Tuple.class)
                .setParameter("from", season.from())
                .setParameter("until", season.until())
                .getResultList());
        return found.stream()
                .collect(Collectors.groupingBy(
                        row -> row.get("id", UUID.class),
                        Collectors.collectingAndThen(
                                Collectors.mapping(VisitsShutOut::time, Collectors.toList()), ShutTimes::new)));
    }

    private static Window time(Tuple row) {
        return ShutTimes.time(row.get("from_day", LocalDate.class), row.get("until_day", LocalDate.class));
    }

    /** What has a day on which the home is shut: it wants another. */
    public List<Booked> booked(UUID home, LocalDate today) {
        List<Tuple> found = DayPlans.tuples(rows.createNativeQuery(BOOKED, Tuple.class)
                .setParameter("home", home)
                .setParameter("today", today)
                .getResultList());
        return found.stream()
                .map(row -> new Booked(
                        row.get("id", UUID.class),
                        row.get("day", LocalDate.class),
                        String.valueOf(row.get("starts")).substring(0, 5),
                        row.get("technician", String.class)))
                .toList();
    }

    /** What has no day, and none left in its window on which the home is open. */
    public List<NoDayLeft> withoutDay(UUID home, ShutTimes times, LocalDate today) {
        List<Tuple> found = DayPlans.tuples(rows.createNativeQuery(WITHOUT_A_DAY, Tuple.class)
                .setParameter("home", home)
                .setParameter("today", today)
                .getResultList());
        return found.stream()
                .map(row -> new NoDayLeft(
                        row.get("id", UUID.class),
                        new Window(row.get("window_from", LocalDate.class), row.get("window_until", LocalDate.class))))
                .filter(one ->
                        one.window().since(today).flatMap(times::longestOpen).isEmpty())
                .toList();
    }
}
