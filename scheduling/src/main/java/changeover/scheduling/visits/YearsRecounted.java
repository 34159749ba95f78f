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
import java.util.HashSet;
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

    /** A look is not the time that a count begins with. */
    private static final String DONE = """
            select distinct p.agreement_id, p.equipment_id, p.task_code
              from unit_history h
              join visit_task t on t.tenant_id = h.tenant_id and t.id = h.visit_task_id and t.act <> 'check'
              join agreement_promise p on p.tenant_id = h.tenant_id and p.equipment_id = h.equipment_id
                and p.task_code = h.task_code and p.who = 'technician'
              join agreement a on a.tenant_id = p.tenant_id and a.id = p.agreement_id and a.home_id = h.home_id
              join year_planned y on y.tenant_id = a.tenant_id and y.agreement_id = a.id
             where h.tenant_id = current_tenant() and h.visit_id = :visit and a.term_until > :day
               and p.cadence ->> 'how' in ('every-months', 'check-then-replace', 'look-then-change')
               and not exists (select from agreement_ending n where n.tenant_id = a.tenant_id and n.agreement_id = a.id)
            """;

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
        rows.flush();
        LocalDate day = today.day();
        Map<UUID, Set<UnitTask>> done = done(visit, day);
        if (done.isEmpty()) {
            return;
        }
        OwnCatalogue.Own own = trade.read();
        try (var connection = datasource.getConnection()) {
            List<YearToPlan> years = new YearsToPlan(connection, own.catalogue()).underWay(done.keySet());
            Map<UUID, List<StandingVisit>> standing = new YearsUnderWay(connection).of(done.keySet());
            Map<UUID, Map<UnitTask, List<Window>>> unkept = unkept(connection, done.keySet(), day);
            var again = new YearAgainRows(new YearRows(own.catalogue()));
            for (YearToPlan year : years) {
                Set<UnitTask> which = Objects.requireNonNull(done.get(year.agreementId()));
                Laid laid = laid(
                        year,
                        shut -> Recount.of(
                                year.term(),
                                standing.getOrDefault(year.agreementId(), List.of()),
                                year.tasks().stream()
                                        .filter(task ->
                                                which.contains(new UnitTask(task.equipmentId(), task.taskCode())))
                                        .toList(),
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
    private Map<UUID, Set<UnitTask>> done(UUID visit, LocalDate day) {
        List<Tuple> found = rows.createNativeQuery(DONE, Tuple.class)
                .setParameter("visit", visit)
                .setParameter("day", day)
                .getResultList();
        Map<UUID, Set<UnitTask>> done = new HashMap<>();
        for (Tuple row : found) {
            done.computeIfAbsent(row.get("agreement_id", UUID.class), _ -> new HashSet<>())
                    .add(new UnitTask(row.get("equipment_id", UUID.class), row.get("task_code", String.class)));
        }
        return done;
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
