package changeover.scheduling.hours;

import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The weeks of the current business's technicians, a week by three statements. */
@ApplicationScoped
public class HoursWorked {

    private static final int A_WEEK = 7;

    /** A stretch that began before the week, or runs into it, is seen whole. */
    private static final int AROUND = 2;

    /** Whoever went along was there as long. */
    private static final String WORKED = """
            select x.person, c.day, c.minutes, c.arrived_at as arrived, c.left_at as gone
              from closure c
              cross join lateral (select c.technician_id as person union
                select s.technician_id from appointment_second s
                 where s.tenant_id = c.tenant_id and s.visit_id = c.visit_id) x
             where c.day >= :monday and c.day < :next and not exists (
               select 1 from partner_visit_done d where d.tenant_id = c.tenant_id and d.visit_id = c.visit_id)
            """;

    private static final String CORRECTED = """
            select distinct on (person_id, day) person_id, day, minutes, why from hours_correction
             where day >= :monday and day < :next order by person_id, day, id desc
            """;

    private static final String SIGNED = """
            select distinct on (person_id) person_id, at, minutes from hours_signature
             where monday >= :monday and monday < :next order by person_id, id desc
            """;

    private record At(UUID person, LocalDate day) {}

    @Inject
    EntityManager rows;

    @Inject
    People people;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    Clock clock;

    /** Of every technician, and of whoever else worked in it, by name. */
    public List<WeekHours> week(LocalDate anyDay) {
        LocalDate monday = WeekHours.mondayOf(anyDay);
        ZoneId zone = businesses.current().zone();
        Map<At, WorkedDays.Worked> worked = worked(monday, zone);
        Map<At, Tuple> corrected = by(CORRECTED, monday, row -> at(row, "person_id"));
        Map<UUID, Tuple> signed = by(SIGNED, monday, row -> row.get("person_id", UUID.class));
        return people.all().stream()
                .filter(one -> one.role() == Role.TECHNICIAN && one.worksOn(monday) || isIn(one, worked, corrected))
                .map(one -> new WeekHours(
                        one.personId(),
                        one.name(),
                        monday,
                        monday.datesUntil(monday.plusDays(A_WEEK))
                                .map(day -> new At(one.personId(), day))
                                .map(at -> day(
                                        at.day(), worked.getOrDefault(at, WorkedDays.Worked.NONE), corrected.get(at)))
                                .toList(),
                        signature(signed.get(one.personId()))))
                .toList();
    }

    @SuppressWarnings("unchecked")
    private Map<At, WorkedDays.Worked> worked(LocalDate monday, ZoneId zone) {
        LocalDate next = monday.plusDays(A_WEEK);
        Query ask = rows.createNativeQuery(WORKED, Tuple.class)
                .setParameter("monday", monday.minusDays(AROUND))
                .setParameter("next", next.plusDays(AROUND));
        List<Tuple> found = ask.getResultList();
        Map<UUID, List<WorkedDays.Visited>> visits = found.stream()
                .collect(Collectors.groupingBy(
                        row -> row.get("person", UUID.class),
                        Collectors.mapping(HoursWorked::visited, Collectors.toList())));
        Map<At, WorkedDays.Worked> worked = new HashMap<>();
        visits.forEach((person, all) -> new WorkedDays(zone).of(all).forEach((day, one) -> {
            if (!day.isBefore(monday) && day.isBefore(next)) {
                worked.put(new At(person, day), one);
            }
        }));
        return worked;
    }

    private static WorkedDays.Visited visited(Tuple row) {
        return new WorkedDays.Visited(
                row.get("day", LocalDate.class),
                row.get("minutes", Integer.class),
                row.get("arrived", Instant.class),
                row.get("gone", Instant.class));
    }

    private static boolean isIn(Membership one, Map<At, WorkedDays.Worked> worked, Map<At, Tuple> corrected) {
        return worked.keySet().stream().anyMatch(at -> at.person().equals(one.personId()))
                || corrected.keySet().stream().anyMatch(at -> at.person().equals(one.personId()));
    }

    private static At at(Tuple row, String person) {
        return new At(row.get(person, UUID.class), row.get("day", LocalDate.class));
    }

    private static WeekHours.Day day(LocalDate day, WorkedDays.Worked worked, @Nullable Tuple corrected) {
        WeekHours.Correction correction = corrected == null
                ? null
                : new WeekHours.Correction(corrected.get("minutes", Integer.class), corrected.get("why", String.class));
        return new WeekHours.Day(day, worked.visits(), worked.onSite(), worked.stretches(), correction);
    }

    private static WeekHours.@Nullable Signature signature(@Nullable Tuple row) {
        return row == null
                ? null
                : new WeekHours.Signature(row.get("at", Instant.class), row.get("minutes", Integer.class));
    }

    @SuppressWarnings("unchecked")
    private <K> Map<K, Tuple> by(String sql, LocalDate monday, Function<Tuple, K> key) {
        Query ask = rows.createNativeQuery(sql, Tuple.class)
                .setParameter("monday", monday)
                .setParameter("next", monday.plusDays(A_WEEK));
        List<Tuple> found = ask.getResultList();
        return found.stream().collect(Collectors.toMap(key, Function.identity()));
    }

    /** The week of one person; empty days where they worked none. */
    public WeekHours of(UUID person, LocalDate anyDay) {
        LocalDate monday = WeekHours.mondayOf(anyDay);
        return week(anyDay).stream()
                .filter(one -> one.person().equals(person))
                .findFirst()
                .orElseGet(() -> new WeekHours(
                        person,
                        people.of(person).map(Membership::name).orElse(""),
                        monday,
                        monday.datesUntil(monday.plusDays(A_WEEK))
                                .map(day -> new WeekHours.Day(day, 0, 0, List.of(), null))
                                .toList(),
                        null));
    }

    /** The person's own word for a day. Refused for a day to come. */
    public void correct(UUID person, LocalDate day, int minutes, String why) {
        if (day.isAfter(today.day())) {
            throw Refusal.of("hours.to-come").at("day").thrown();
        }
        if (why.isBlank()) {
            throw Refusal.of("hours.says-why").at("why").thrown();
        }
        rows.createNativeQuery("insert into hours_correction (person_id, day, minutes, why)"
                        + " values (:person, :day, :minutes, :why)")
                .setParameter("person", person)
                .setParameter("day", day)
                .setParameter("minutes", minutes)
                .setParameter("why", why.strip())
                .executeUpdate();
    }

    /** The person signs the week as they saw it. Refused where it says something else by now, or has not begun. */
    public void sign(UUID person, LocalDate anyDay, int minutes) {
        WeekHours week = of(person, anyDay);
        if (week.monday().isAfter(today.day())) {
            throw Refusal.of("hours.to-come").thrown();
        }
        if (week.minutes() != minutes) {
            throw Refusal.of("hours.changed").thrown();
        }
        if (!week.isSigned()) {
            rows.createNativeQuery("insert into hours_signature (person_id, monday, minutes, at)"
                            + " values (:person, :monday, :minutes, :at)")
                    .setParameter("person", person)
                    .setParameter("monday", week.monday())
                    .setParameter("minutes", minutes)
                    .setParameter("at", clock.instant())
                    .executeUpdate();
        }
    }

    /** A row for each day that somebody worked: hours with two decimals. */
    public byte[] csv(LocalDate anyDay) {
        return HoursTable.bytes(week(anyDay));
    }
}
