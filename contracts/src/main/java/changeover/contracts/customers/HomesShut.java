package changeover.contracts.customers;

import changeover.contracts.tenants.Ids;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** When the current business's homes are shut, the heat off or the water drained. */
@ApplicationScoped
public class HomesShut {

    /** The times with their homes, as a table in a statement: {@code home_id, from_day, until_day}, the last null while it is not known. */
    public static final String TIMES = """
            (select s.tenant_id, s.home_id, s.from_day, coalesce(o.day, s.until_day) as until_day
               from home_shut s left join home_opening o on o.tenant_id = s.tenant_id and o.shut_id = s.id
              where coalesce(o.day, s.until_day, 'infinity') > s.from_day)""";

    private static final String EACH = """
            select s.id, s.home_id, s.from_day, coalesce(o.day, s.until_day) as until_day, s.heat_off, s.water_drained, s.note,
              o.id is not null as opened
              from home_shut s left join home_opening o on o.tenant_id = s.tenant_id and o.shut_id = s.id
            """;

    private static final String OF_A_HOME = EACH + """
             where s.home_id = :home and coalesce(o.day, s.until_day, 'infinity') > s.from_day
             order by s.from_day, s.id
            """;

    private static final String ON_A_DAY = EACH + """
             where s.home_id in (:homes) and s.from_day <= :day and coalesce(o.day, s.until_day, 'infinity') > :day
             order by s.from_day, s.id
            """;

    /**
     * A time in which a home is shut.
     *
     * @param until the day on which it is open again; null while nobody knows
     * @param opened whether somebody said that it is open again
     */
    public record Shut(
            UUID id,
            LocalDate from,
            @Nullable LocalDate until,
            boolean heatOff,
            boolean waterDrained,
            @Nullable String note,
            boolean opened) {

        public boolean on(LocalDate day) {
            return !day.isBefore(from) && (until == null || day.isBefore(until));
        }

        public boolean isOver(LocalDate day) {
            return until != null && !until.isAfter(day);
        }
    }

    /** @param until the day on which it is open again; null where nobody knows yet */
    public record Facts(
            LocalDate from,
            @Nullable LocalDate until,
            boolean heatOff,
            boolean waterDrained,
            @Nullable String note) {}

    @Inject
    EntityManager rows;

    @SuppressWarnings("unchecked")
    public List<Shut> of(UUID homeId) {
        List<Tuple> found = rows.createNativeQuery(OF_A_HOME, Tuple.class)
                .setParameter("home", homeId)
                .getResultList();
        return found.stream().map(HomesShut::time).toList();
    }

    /** Those of the homes that are shut on a day, each with that time. */
    @SuppressWarnings("unchecked")
    public Map<UUID, Shut> on(Collection<UUID> homes, LocalDate day) {
        if (homes.isEmpty()) {
            return Map.of();
        }
        List<Tuple> found = rows.createNativeQuery(ON_A_DAY, Tuple.class)
                .setParameter("homes", homes)
                .setParameter("day", day)
                .getResultList();
        return found.stream()
                .collect(Collectors.toMap(row -> row.get("home_id", UUID.class), HomesShut::time, (one, _) -> one));
    }

    private static Shut time(Tuple row) {
        return new Shut(
                row.get("id", UUID.class),
                row.get("from_day", LocalDate.class),
                row.get("until_day", LocalDate.class),
                row.get("heat_off", Boolean.class),
                row.get("water_drained", Boolean.class),
                row.get("note", String.class),
                row.get("opened", Boolean.class));
    }

    /** The time in which the home is shut on that day. */
    public Optional<Shut> on(UUID homeId, LocalDate day) {
        return of(homeId).stream().filter(one -> one.on(day)).findFirst();
    }

    /** Refused where it would open before it is shut, or two of its times would meet. */
    public UUID shut(UUID homeId, Facts facts) {
        var checks = new Checks();
        String note = checks.note("note", facts.note());
        LocalDate until = facts.until();
        checks.refuseIf(until != null && !until.isAfter(facts.from()), "until", "home-shut.opens-later");
        checks.orRefuse();
        if (of(homeId).stream().anyMatch(one -> meets(one, facts))) {
            throw Refusal.of("home-shut.already").at("from").thrown();
        }
        UUID id = Ids.next();
        rows.createNativeQuery("insert into home_shut (id, home_id, from_day, until_day, heat_off, water_drained, note)"
                        + " values (:id, :home, :from, cast(:until as date), :heat, :water, cast(:note as text))")
                .setParameter("id", id)
                .setParameter("home", homeId)
                .setParameter("from", facts.from())
                .setParameter("until", until == null ? null : until.toString())
                .setParameter("heat", facts.heatOff())
                .setParameter("water", facts.waterDrained())
                .setParameter("note", note)
                .executeUpdate();
        return id;
    }

    private static boolean meets(Shut one, Facts other) {
        LocalDate until = other.until();
        LocalDate ends = one.until();
        return (ends == null || other.from().isBefore(ends))
                && (until == null || one.from().isBefore(until));
    }

    /**
     * The home is open again from a day; a day up to the first says that it never was shut.
     *
     * @return false where the home has no such time, or somebody said so already
     */
    public boolean opens(UUID homeId, UUID shutId, LocalDate day) {
        boolean open = of(homeId).stream().anyMatch(one -> one.id().equals(shutId) && !one.opened());
        if (open) {
            rows.createNativeQuery("insert into home_opening (shut_id, day) values (:shut, :day)")
                    .setParameter("shut", shutId)
                    .setParameter("day", day)
                    .executeUpdate();
        }
        return open;
    }
}
