package changeover.scheduling.deferred;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.words.Wording;
import changeover.scheduling.Shop;
import changeover.scheduling.partners.Licensed;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A cooling reading put off in April is taken up by the next visit in warm weather, and by none made for it alone. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DeferredReadingsTest {

    @Inject
    Shop shop;

    @Inject
    AllEquipment equipment;

    @Inject
    Visits visits;

    @Inject
    DeferredReadings readings;

    @Inject
    Licensed licensed;

    @Inject
    EntityManager rows;

    private record At(UUID tenant, UUID home, UUID unit, UUID putOffAt) {}

    @Test
    void it_waits_without_a_trip_of_its_own_and_joins_the_next_visit_in_warm_weather() {
        At at = putOff("cooling-split");
        assertEquals(List.of(), said(at));
        assertEquals(0, shop.in(at.tenant, () -> readings.join(at.home)));
        UUID winter = make(at, "2027-01-10", "2027-02-28");
        assertEquals(List.of(), said(at));
        UUID summer = make(at, "2026-05-01", "2026-07-01");
        assertEquals(List.of("cooling-split 2026-05-15..2026-06-30 20"), said(at));
        assertEquals(List.of("2026-05-15..2026-06-30 20"), shop.in(at.tenant, () -> windows(summer)));
        assertEquals(List.of("2027-01-10..2027-02-27 10"), shop.in(at.tenant, () -> windows(winter)));
        assertEquals(0, shop.in(at.tenant, () -> readings.join(at.home)));
    }

    @Test
    void a_visit_that_a_partner_makes_takes_none_up() {
        At at = putOff("cooling-split");
        LocalDate day = LocalDate.of(2039, 6, 4);
        UUID summer = shop.in(at.tenant, () -> {
            UUID visit = visits.make(
                            new NewVisit(at.home, null, VisitKind.RETURN, Window.ofDay(day), 30, null, null, List.of()))
                    .id();
            licensed.give(visit, licensed.partner("Fulton Reyes"), day);
            return visit;
        });
        assertEquals(0, shop.in(at.tenant, () -> readings.join(at.home)));
        assertEquals(0, shop.in(at.tenant, () -> visits.tasksOf(summer)).size());
        shop.in(at.tenant, () -> {
            licensed.takeBack(summer);
            return 0;
        });
        assertEquals(1, shop.in(at.tenant, () -> readings.join(at.home)));
    }

    @Test
    void what_was_put_off_for_another_reason_still_asks_for_a_visit_of_its_own() {
        At at = putOff("coil-dust");
        make(at, "2026-05-01", "2026-07-01");
        assertEquals(List.of(), said(at));
    }

    @Test
    void put_off_in_april_for_something_else_than_the_cold_it_joins_nothing() {
        At other = putOff("cooling-split");
        sql(other, "update task_outcome set cause = 'other', reason = 'boxes before it' where visit_id = :visit");
        make(other, "2026-06-01", "2026-07-01");
        assertEquals(List.of(), said(other));
        At warm = putOff("cooling-split");
        sql(warm, """
                insert into reading (id, visit_id, visit_task_id, home_id, code, value, unit, entered_value, standing, day)
                select uuidv7(), t.visit_id, t.id, v.home_id, 'outdoor-air', 21, 'degC', '21', 'not_judged', date '2026-04-20'
                  from visit_task t join visit v on v.id = t.visit_id where t.visit_id = :visit""");
        make(warm, "2026-06-01", "2026-07-01");
        assertEquals(List.of(), said(warm));
        At cold = putOff("cooling-split");
        sql(cold, "update task_outcome set cause = 'cold' where visit_id = :visit");
        make(cold, "2026-06-01", "2026-07-01");
        assertEquals(List.of("cooling-split 2026-06-01..2026-06-30 20"), said(cold));
    }

    private void sql(At at, String statement) {
        shop.in(
                at.tenant,
                () -> rows.createNativeQuery(statement)
                        .setParameter("visit", at.putOffAt)
                        .executeUpdate());
    }

    @Test
    void corrected_the_later_visit_is_spared_the_reading() {
        At at = putOff("cooling-split");
        make(at, "2026-06-01", "2026-07-01");
        assertEquals(List.of("cooling-split 2026-06-01..2026-06-30 20"), said(at));
        shop.in(at.tenant, () -> {
            rows.createNativeQuery("update task_outcome set outcome = 'done', reason = null where visit_id = :visit")
                    .setParameter("visit", at.putOffAt)
                    .executeUpdate();
            readings.takeBack(at.putOffAt);
            return 0;
        });
        assertEquals(List.of(), said(at));
    }

    private At putOff(String task) {
        UUID tenant = shop.open("CA-QC");
        return shop.in(tenant, () -> {
            UUID home = shop.home("QC");
            UUID unit = equipment
                    .addToHome(
                            home,
                            new Equipment.Facts(
                                    null,
                                    "air-handler",
                                    "Air handler",
                                    null,
                                    null,
                                    null,
                                    null,
                                    null,
                                    null,
                                    null,
                                    null,
                                    null,
                                    Map.of(),
                                    Map.of()))
                    .id();
            UUID visit = visits.make(new NewVisit(
                            home,
                            null,
                            VisitKind.EXTRA,
                            window("2026-04-01", "2026-06-16"),
                            0,
                            null,
                            null,
                            List.of(new NewVisit.NewTask(unit, task, new Wording("s", "s")))))
                    .id();
            visits.close(visit, LocalDate.of(2026, 4, 20));
            UUID line = visits.tasksOf(visit).getFirst().id();
            rows.createNativeQuery("""
                            insert into task_outcome (id, visit_id, visit_task_id, outcome, reason)
                            values (uuidv7(), :visit, :line, 'deferred', 'eight degrees outside')""")
                    .setParameter("visit", visit)
                    .setParameter("line", line)
                    .executeUpdate();
            rows.createNativeQuery("""
                            insert into follow_up (visit_id, home_id, kind, visit_task_id, opened_on)
                            values (:visit, :home, 'visit', :line, date '2026-04-20')""")
                    .setParameter("visit", visit)
                    .setParameter("home", home)
                    .setParameter("line", line)
                    .executeUpdate();
            return new At(tenant, home, unit, visit);
        });
    }

    /** A visit of ours with ten minutes of work of its own. */
    private UUID make(At at, String from, String until) {
        return shop.in(at.tenant, () -> {
            UUID visit = visits.make(new NewVisit(
                            at.home, null, VisitKind.RETURN, window(from, until), 10, null, "Ours", List.of()))
                    .id();
            readings.join(at.home);
            return visit;
        });
    }

    @SuppressWarnings("unchecked")
    private List<String> said(At at) {
        return shop.in(
                at.tenant,
                () -> rows.createNativeQuery("""
                        select t.task_code || ' ' || t.due_from || '..' || (t.due_until - 1) || ' ' || v.minutes
                          from visit_task t join visit v on v.id = t.visit_id
                         where v.home_id = :home and v.id <> :first order by 1""", String.class)
                        .setParameter("home", at.home)
                        .setParameter("first", at.putOffAt)
                        .getResultList());
    }

    @SuppressWarnings("unchecked")
    private List<String> windows(UUID visit) {
        return rows.createNativeQuery(
                        "select window_from || '..' || (window_until - 1) || ' ' || minutes from visit where id = :visit",
                        String.class)
                .setParameter("visit", visit)
                .getResultList();
    }

    private static Window window(String from, String until) {
        return new Window(LocalDate.parse(from), LocalDate.parse(until));
    }
}
