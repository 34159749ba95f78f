package changeover.scheduling.dayplan.season;

import changeover.contracts.calendar.Window;
import changeover.contracts.customers.HomesShut;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.Roster;
import changeover.scheduling.dayplan.Rosters;
import changeover.scheduling.visits.GivenOut;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The days of an answer are given, all or some: those that still stand. What cannot be given any more is named and left out, what
 * has a day or an end by now is left as it is, and days of somebody who is only thought of are never given.
 */
@ApplicationScoped
public class SeasonAcceptance {

    private static final String OPEN =
            """
            select r.visit_id, concat_ws(', ', h.street, h.unit_label, h.city) as home, r.technician_id, r.second_id, r.day,
              r.starts, r.ends, v.window_from, v.window_until, q.first_day, q.from_day, q.until_day,
              exists (select 1 from """ + HomesShut.TIMES + """
               s where s.tenant_id = v.tenant_id and s.home_id = v.home_id and s.from_day <= r.day
                and (s.until_day is null or s.until_day > r.day)) as shut,
              exists (select 1 from (select tenant_id, technician_id, day, starts, ends from appointment
                union all
                select tenant_id, technician_id, day, starts, ends from appointment_second) a
                where a.tenant_id = r.tenant_id and a.technician_id in (r.technician_id, r.second_id) and a.day = r.day
                  and a.starts < r.ends and a.ends > r.starts) as taken
            from season_run_visit r
            join season_run q on q.tenant_id = r.tenant_id and q.id = r.run_id
            join visit v on v.tenant_id = r.tenant_id and v.id = r.visit_id
            join home h on h.tenant_id = v.tenant_id and h.id = v.home_id
            where r.run_id = :run and r.day is not null and not r.tried
              and not exists (select 1 from appointment a where a.tenant_id = v.tenant_id and a.visit_id = v.id)
              and not exists (select 1 from visit_ending e where e.tenant_id = v.tenant_id and e.visit_id = v.id)
              and """ + GivenOut.NOT + " order by r.day, r.starts, r.visit_id";

    private static final String GIVE = """
            insert into appointment (visit_id, technician_id, day, starts, ends)
            select r.visit_id, r.technician_id, r.day, r.starts, r.ends from season_run_visit r
             where r.tenant_id = current_tenant() and r.run_id = :run and r.visit_id in (:visits)
            """;

    private static final String WITH_THEM = """
            insert into appointment_second (visit_id, technician_id, day, starts, ends)
            select r.visit_id, r.second_id, r.day, r.starts, r.ends from season_run_visit r
             where r.tenant_id = current_tenant() and r.run_id = :run and r.second_id is not null and r.visit_id in (:visits)
            """;

    /** @param leftOut of those that were asked for, by day */
    public record Accepted(int given, List<LeftOut> leftOut) {}

    private record Standing(List<UUID> open, List<LeftOut> leftOut) {}

    @Inject
    EntityManager rows;

    @Inject
    Rosters rosters;

    @Inject
    People people;

    @Inject
    Today today;

    /** What of an answer cannot be given any more, by day. */
    public List<LeftOut> leftOut(UUID run) {
        return standing(run, null).leftOut();
    }

    /** @param visits null for all */
    public Accepted accept(UUID run, @Nullable Collection<UUID> visits) {
        // Whoever writes hours of the crew stands in line, so that no hour is given away between the look and the yes.
        var _ = rows.createNativeQuery(
                        "select cast(pg_advisory_xact_lock(hashtextextended('crew ' || current_tenant(), 7)) as text)")
                .getSingleResult();
        Standing standing = standing(run, visits);
        if (standing.open().isEmpty() && standing.leftOut().isEmpty()) {
            throw Refusal.of("season-run.nothing-to-give").thrown();
        }
        if (!standing.open().isEmpty()) {
            Stream.of(GIVE, WITH_THEM)
                    .forEach(sql -> rows.createNativeQuery(sql)
                            .setParameter("run", run)
                            .setParameter("visits", standing.open())
                            .executeUpdate());
            rows.createNativeQuery("insert into season_run_acceptance (run_id, visits) values (:run, :visits)")
                    .setParameter("run", run)
                    .setParameter("visits", standing.open().size())
                    .executeUpdate();
        }
        return new Accepted(standing.open().size(), standing.leftOut());
    }

    @SuppressWarnings("unchecked")
    private Standing standing(UUID run, @Nullable Collection<UUID> visits) {
        rows.flush();
        List<Tuple> found = rows.createNativeQuery(OPEN, Tuple.class)
                .setParameter("run", run)
                .getResultList();
        var open = new ArrayList<UUID>();
        var leftOut = new ArrayList<LeftOut>();
        if (found.isEmpty()) {
            return new Standing(open, leftOut);
        }
        Roster roster = rosters.of(new Window(
                found.getFirst().get("from_day", LocalDate.class),
                found.getFirst().get("until_day", LocalDate.class)));
        var members = new HashMap<UUID, Membership>();
        people.all().forEach(member -> members.put(member.personId(), member));
        for (Tuple row : found) {
            UUID visit = row.get("visit_id", UUID.class);
            if (visits != null && !visits.contains(visit)) {
                continue;
            }
            why(row, roster, members)
                    .ifPresentOrElse(
                            why -> leftOut.add(new LeftOut(
                                    visit,
                                    row.get("home", String.class),
                                    row.get("day", LocalDate.class),
                                    row.get("starts", LocalTime.class),
                                    why)),
                            () -> open.add(visit));
        }
        return new Standing(open, leftOut);
    }

    private Optional<LeftOut.Why> why(Tuple row, Roster roster, Map<UUID, Membership> members) {
        LocalDate day = row.get("day", LocalDate.class);
        if (day.atTime(row.get("starts", LocalTime.class)).isBefore(today.time())) {
            return Optional.of(LeftOut.Why.PAST);
        }
        var window = new Window(row.get("window_from", LocalDate.class), row.get("window_until", LocalDate.class));
        boolean late = !window.until().isAfter(row.get("first_day", LocalDate.class));
        if (!late && !window.contains(day)) {
            return Optional.of(LeftOut.Why.WINDOW_MOVED);
        }
        if (row.get("shut", Boolean.class)) {
            return Optional.of(LeftOut.Why.HOME_SHUT);
        }
        List<UUID> going = Stream.of("technician_id", "second_id")
                .flatMap(who -> Stream.ofNullable(row.get(who, UUID.class)))
                .toList();
        if (!going.stream()
                .allMatch(id -> Optional.ofNullable(members.get(id))
                        .filter(member -> member.worksOn(day))
                        .isPresent())) {
            return Optional.of(LeftOut.Why.LEFT);
        }
        if (going.stream().anyMatch(id -> roster.on(id, day).isEmpty())) {
            return Optional.of(LeftOut.Why.DAY_OFF);
        }
        return row.get("taken", Boolean.class) ? Optional.of(LeftOut.Why.HOUR_TAKEN) : Optional.empty();
    }
}
