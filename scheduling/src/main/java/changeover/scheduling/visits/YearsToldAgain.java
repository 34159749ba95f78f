package changeover.scheduling.visits;

import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.takeover.TakeOver;
import changeover.contracts.tenants.Today;
import changeover.scheduling.visits.LastTimes.Told;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * When it is told when a task was last done, what is still owed of it this year is laid out from that day. What has its
 * day already, or was begun, stays where it is; and nothing from before the take-over is called late.
 */
@ApplicationScoped
class YearsToldAgain {

    /** Years under way in which a task told of is promised, and no line of it is late, has a day or a partner, or was begun. */
    private static final String FREE = """
            select p.agreement_id, a.home_id, p.equipment_id, p.task_code, o.visits_done, o.day
              from unnest(?::uuid[], ?::text[]) as t (unit, task)
              join agreement_promise p on p.equipment_id = t.unit and p.task_code = t.task
              join agreement a on a.tenant_id = p.tenant_id and a.id = p.agreement_id and a.term_until > ?
              join year_planned y on y.tenant_id = a.tenant_id and y.agreement_id = a.id
              left join agreement_taken_over o on o.tenant_id = a.tenant_id and o.agreement_id = a.id
             where not exists (select from agreement_ending n where n.tenant_id = a.tenant_id and n.agreement_id = a.id)
               and not exists (
                 select from visit v join visit_task k on k.tenant_id = v.tenant_id and k.visit_id = v.id
                  where v.tenant_id = a.tenant_id and v.agreement_id = a.id and k.equipment_id = t.unit
                    and k.task_code = t.task and (
                      k.due_until <= ?
                      or exists (select from visit_ending e where e.tenant_id = v.tenant_id and e.visit_id = v.id)
                      or exists (select from appointment d where d.tenant_id = v.tenant_id and d.visit_id = v.id)
                      or not """ + GivenOut.NOT + """
                      or exists (select from operation w where w.tenant_id = v.tenant_id and w.visit_id = v.id)))
             order by a.term_from, p.agreement_id, p.position""";

    private static final List<String> TAKEN_UP = List.of(
            "delete from visit_task k using visit v, unnest(?::uuid[], ?::uuid[], ?::text[]) as t (agreement, unit, task)"
                    + " where v.agreement_id = t.agreement and k.tenant_id = v.tenant_id and k.visit_id = v.id"
                    + " and k.equipment_id = t.unit and k.task_code = t.task and k.due_until > ?",
            "delete from unkept_promise k using unnest(?::uuid[], ?::uuid[], ?::text[]) as t (agreement, unit, task)"
                    + " where k.agreement_id = t.agreement and k.equipment_id = t.unit and k.task_code = t.task"
                    + " and k.due_until > ?",
            "delete from household_task k using unnest(?::uuid[], ?::uuid[], ?::text[]) as t (agreement, unit, task)"
                    + " where k.agreement_id = t.agreement and k.equipment_id = t.unit and k.task_code = t.task"
                    + " and k.done_on is null and k.due_on >= ?");

    /** @param takenOver the day on which the agreement was, if it was */
    private record Free(
            UUID agreement,
            UUID home,
            Set<LastTimes.Of> tasks,
            @Nullable Integer visitsDone,
            @Nullable LocalDate takenOver) {}

    @Inject
    AgroalDataSource datasource;

    @Inject
    OwnCatalogue trade;

    @Inject
    Today today;

    @Inject
    TakeOver takeOver;

    void tell(List<Told> told) {
        LocalDate day = latest(today.day(), takeOver.day().orElse(null));
        try (Connection connection = datasource.getConnection()) {
            List<Free> left = free(connection, told, day);
            OwnCatalogue.Own own = trade.read();
            while (!left.isEmpty()) {
                Map<UUID, Free> round = new LinkedHashMap<>();
                left.removeIf(one -> round.putIfAbsent(one.home(), one) == null);
                again(
                        connection,
                        own,
                        round.values().stream().collect(Collectors.toMap(Free::agreement, Function.identity())),
                        day);
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the years could not be laid out from the last times", cause);
        }
    }

    private static List<Free> free(Connection connection, List<Told> told, LocalDate day) throws SQLException {
        Map<UUID, Free> free = new LinkedHashMap<>();
        try (PreparedStatement ask = connection.prepareStatement(FREE)) {
            ask.setArray(
                    1,
                    connection.createArrayOf(
                            "uuid", told.stream().map(Told::unit).toArray()));
            ask.setArray(
                    2,
                    connection.createArrayOf(
                            "text", told.stream().map(Told::task).toArray()));
            ask.setObject(3, day);
            ask.setObject(4, day);
            try (ResultSet row = ask.executeQuery()) {
                while (row.next()) {
                    UUID agreement = row.getObject(1, UUID.class);
                    Free one = free.get(agreement);
                    if (one == null) {
                        one = new Free(
                                agreement,
                                row.getObject(2, UUID.class),
                                new HashSet<>(),
                                row.getObject(5, Integer.class),
                                row.getObject(6, LocalDate.class));
                        free.put(agreement, one);
                    }
                    one.tasks().add(new LastTimes.Of(row.getObject(3, UUID.class), row.getString(4)));
                }
            }
        }
        return new ArrayList<>(free.values());
    }

    private static void again(Connection connection, OwnCatalogue.Own own, Map<UUID, Free> round, LocalDate day)
            throws SQLException {
        takeUp(connection, round, day);
        List<YearToPlan> years = new YearsToPlan(connection, own.catalogue()).underWay(round.keySet());
        Map<UUID, List<StandingVisit>> visits = new YearsUnderWay(connection)
                .of(years.stream().map(YearToPlan::agreementId).toList());
        var rows = new YearAgainRows(new YearRows(own.catalogue()));
        for (YearToPlan year : years) {
            Free one = Objects.requireNonNull(round.get(year.agreementId()));
            List<StandingVisit> standing = visits.getOrDefault(year.agreementId(), List.of());
            rows.add(year, laid(year, one, standing, own, day), standing);
        }
        rows.store(connection);
    }

    private static void takeUp(Connection connection, Map<UUID, Free> round, LocalDate day) throws SQLException {
        List<UUID> agreements = new ArrayList<>();
        List<UUID> units = new ArrayList<>();
        List<String> tasks = new ArrayList<>();
        round.values()
                .forEach(one -> one.tasks().forEach(of -> {
                    agreements.add(one.agreement());
                    units.add(of.unit());
                    tasks.add(of.task());
                }));
        for (String sql : TAKEN_UP) {
            try (PreparedStatement delete = connection.prepareStatement(sql)) {
                delete.setArray(1, connection.createArrayOf("uuid", agreements.toArray()));
                delete.setArray(2, connection.createArrayOf("uuid", units.toArray()));
                delete.setArray(3, connection.createArrayOf("text", tasks.toArray()));
                delete.setObject(4, day);
                delete.executeUpdate();
            }
        }
    }

    private static YearAgain laid(
            YearToPlan year, Free one, List<StandingVisit> standing, OwnCatalogue.Own own, LocalDate today) {
        LocalDate day = latest(today, one.takenOver());
        PromisesLeft left = owed(year, one, own, day);
        if (one.takenOver() == null) {
            return YearAgain.of(year, year.visits(), standing, left, own.seasons(), own.longestVisit(), day);
        }
        int most = one.visitsDone() == null ? year.visits() : Math.max(0, year.visits() - one.visitsDone());
        int sold = Math.min(most, standing.size());
        YearAgain laid;
        do {
            laid = YearAgain.of(year, sold, standing, left, own.seasons(), own.longestVisit(), day);
        } while (!laid.unkept().isEmpty() && sold++ < most);
        return laid;
    }

    private static PromisesLeft owed(YearToPlan year, Free one, OwnCatalogue.Own own, LocalDate day) {
        Term term = year.term();
        List<Promise> ahead = new ArrayList<>();
        for (PromisedTask task : year.tasks()) {
            if (one.tasks().contains(new LastTimes.Of(task.equipmentId(), task.taskCode()))) {
                LocalDate from = RestOfYear.owedFrom(task, Optional.empty(), term, own.seasons(), day);
                if (from.isBefore(term.until())) {
                    ahead.addAll(PromisesLeft.of(term, List.of(task), own.seasons(), from)
                            .ahead());
                }
            }
        }
        return new PromisesLeft(ahead, List.of());
    }

    private static LocalDate latest(LocalDate one, @Nullable LocalDate other) {
        return other != null && other.isAfter(one) ? other : one;
    }
}
