package changeover.scheduling.visits;

import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.ShutTimes;
import changeover.contracts.tenants.Today;
import changeover.scheduling.visits.YearToPlan.UnitTask;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;

/**
 * What technicians really did moves what they still owe of it in the terms that are sold; a year in which nothing is owed on
 * another day is not touched.
 */
@ApplicationScoped
public class YearsRecounted {

    /** What was done at a visit, or taken back there. A look is not the time that a count begins with. */
    private static final String COUNTED = """
            select distinct p.agreement_id, p.equipment_id, p.task_code, h.id is null as undone,
              case when h.id is null then t.due_from end as due_from
              from visit v
              join visit_task t on t.tenant_id = v.tenant_id and t.visit_id = v.id and t.act <> 'check'
              left join unit_history h on h.tenant_id = t.tenant_id and h.visit_task_id = t.id
              join agreement_promise p on p.tenant_id = t.tenant_id and p.equipment_id = t.equipment_id
                and p.task_code = t.task_code and p.who = 'technician'
              join agreement a on a.tenant_id = p.tenant_id and a.id = p.agreement_id and a.home_id = v.home_id
              join year_planned y on y.tenant_id = a.tenant_id and y.agreement_id = a.id
             where v.tenant_id = current_tenant() and v.id = :visit and (h.id is not null or t.id in (:undone))
               and a.term_until > :day
               and p.cadence ->> 'how' in ('every-months', 'check-then-replace', 'look-then-change')
               and not exists (select from agreement_ending n where n.tenant_id = a.tenant_id and n.agreement_id = a.id)
            """;

    /** No line of any visit. */
    private static final Set<UUID> NONE = Set.of(new UUID(0, 0));

    private static final String UNKEPT = """
            select agreement_id, equipment_id, task_code, due_from, due_until from unkept_promise
             where agreement_id = any (?::uuid[]) and equipment_id is not null and due_until > ?
            """;

    private static final String UNKEPT_ANEW = """
            delete from unkept_promise
             where agreement_id = ? and equipment_id = ? and task_code = ? and due_until > ?
            """;

    private record Laid(Recount recount, YearAgain again) {

        static Laid of(YearToPlan year, Recount recount, OwnCatalogue.Own own, LocalDate day) {
            return new Laid(
                    recount, YearAgain.of(year.term(), year.visits(), recount, own.seasons(), own.longestVisit(), day));
        }
    }

    @Inject
    EntityManager rows;

    @Inject
    AgroalDataSource datasource;

    @Inject
    OwnCatalogue trade;

    @Inject
    Today today;

    /** @param visit that was closed, with what was done at it */
    public void follow(UUID visit) {
        count(visit, NONE);
    }

    /**
     * What was moved by what was not done goes back.
     *
     * @param undone lines of the visit of which it was said by mistake that they were done
     */
    public void goBack(UUID visit, Set<UUID> undone) {
        count(visit, undone);
    }

    private void count(UUID visit, Set<UUID> undone) {
        rows.flush();
        LocalDate day = today.day();
        Map<UUID, Map<UnitTask, Recount.Why>> counted = counted(visit, undone, day);
        if (counted.isEmpty()) {
            return;
        }
        OwnCatalogue.Own own = trade.read();
        try (var connection = datasource.getConnection()) {
            List<YearToPlan> years = new YearsToPlan(connection, own.catalogue()).underWay(counted.keySet());
            Map<UUID, List<StandingVisit>> standing = new YearsUnderWay(connection).of(counted.keySet());
            Map<UUID, Map<UnitTask, List<Window>>> unkept = unkept(connection, counted.keySet(), day);
            var again = new YearAgainRows(new YearRows(own.catalogue()));
            for (YearToPlan year : years) {
                Map<PromisedTask, Recount.Why> tasks =
                        tasks(year, Objects.requireNonNull(counted.get(year.agreementId())));
                Laid laid = laid(
                        year,
                        shut -> Recount.of(
                                year.term(),
                                standing.getOrDefault(year.agreementId(), List.of()),
                                tasks,
                                unkept.getOrDefault(year.agreementId(), Map.of()),
                                shut,
                                own.seasons(),
                                day),
                        own,
                        day);
                if (!laid.recount.changesNothing()) {
                    forgetUnkept(connection, year.agreementId(), laid.recount.tasks(), day);
                    again.add(year, laid.again.whileOpen(year.shut()), laid.recount);
                }
            }
            again.store(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("what was done could not be counted from", cause);
        }
    }

    private static Map<PromisedTask, Recount.Why> tasks(YearToPlan year, Map<UnitTask, Recount.Why> counted) {
        Map<PromisedTask, Recount.Why> tasks = new LinkedHashMap<>();
        for (PromisedTask task : year.tasks()) {
            Recount.Why why = counted.get(new UnitTask(task.equipmentId(), task.taskCode()));
            if (why != null) {
                tasks.put(task, why);
            }
        }
        return tasks;
    }

    /** That a home is shut for some days costs no promise: where less would be kept for it, what is owed keeps all its days. */
    private static Laid laid(
            YearToPlan year, Function<ShutTimes, Recount> counted, OwnCatalogue.Own own, LocalDate day) {
        return OpenDays.better(
                year.shut(),
                () -> Laid.of(year, counted.apply(year.shut()), own, day),
                () -> Laid.of(year, counted.apply(ShutTimes.NEVER), own, day),
                laid -> laid.again.unkept().size());
    }

    @SuppressWarnings("unchecked")
    private Map<UUID, Map<UnitTask, Recount.Why>> counted(UUID visit, Set<UUID> undone, LocalDate day) {
        List<Tuple> found = rows.createNativeQuery(COUNTED, Tuple.class)
                .setParameter("visit", visit)
                .setParameter("undone", undone)
                .setParameter("day", day)
                .getResultList();
        Map<UUID, Map<UnitTask, Recount.Why>> counted = new HashMap<>();
        for (Tuple row : found) {
            counted.computeIfAbsent(row.get("agreement_id", UUID.class), _ -> new HashMap<>())
                    .put(
                            new UnitTask(row.get("equipment_id", UUID.class), row.get("task_code", String.class)),
                            new Recount.Why(row.get("undone", Boolean.class), row.get("due_from", LocalDate.class)));
        }
        return counted;
    }

    private static Map<UUID, Map<UnitTask, List<Window>>> unkept(
            Connection connection, Set<UUID> agreements, LocalDate day) throws SQLException {
        Map<UUID, Map<UnitTask, List<Window>>> unkept = new HashMap<>();
        try (var ask = connection.prepareStatement(UNKEPT)) {
            ask.setArray(1, connection.createArrayOf("uuid", agreements.toArray()));
            ask.setObject(2, day);
            try (ResultSet row = ask.executeQuery()) {
                while (row.next()) {
                    unkept.computeIfAbsent(row.getObject(1, UUID.class), _ -> new HashMap<>())
                            .computeIfAbsent(
                                    new UnitTask(row.getObject(2, UUID.class), row.getString(3)),
                                    _ -> new ArrayList<>())
                            .add(new Window(row.getObject(4, LocalDate.class), row.getObject(5, LocalDate.class)));
                }
            }
        }
        return unkept;
    }

    private static void forgetUnkept(Connection connection, UUID agreement, Set<UnitTask> tasks, LocalDate day)
            throws SQLException {
        try (var forget = connection.prepareStatement(UNKEPT_ANEW)) {
            for (UnitTask task : tasks) {
                forget.setObject(1, agreement);
                forget.setObject(2, task.unit());
                forget.setString(3, task.task());
                forget.setObject(4, day);
                forget.addBatch();
            }
            forget.executeBatch();
        }
    }
}
