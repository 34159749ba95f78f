package changeover.scheduling.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.words.Refused;
import changeover.scheduling.Shop;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.Visit;
import changeover.scheduling.visits.VisitKind;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A part from its order to the visit that uses it, to the part. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PartOrdersTest extends AWaitingVisit {

    @Test
    void it_comes_in_two_lots_is_told_and_used_by_a_second_visit() {
        open(VisitKind.CALL);
        UUID motor = order(MOTOR, TWO, 2);
        UUID gasket = order(GASKET, ONE, 5);
        standing(motor, OrderStanding.COMING, NextStep.WAIT);
        UUID first = UUID.randomUUID();
        run(() -> orders.arrive(first, motor, ONE, shelf));
        run(() -> orders.arrive(first, motor, ONE, shelf));
        held(shelf, MOTOR, "1");
        standing(motor, OrderStanding.COMING, NextStep.WAIT);
        run(() -> orders.tell(motor, ToldHow.CALL, "Mara Quill"));
        refused("part-order.more-than-ordered", () -> orders.arrive(UUID.randomUUID(), motor, TWO, shelf));
        run(() -> orders.arrive(UUID.randomUUID(), motor, ONE, van));
        held(van, MOTOR, "1");
        standing(motor, OrderStanding.HERE, NextStep.TELL);
        run(() -> orders.tell(motor, ToldHow.MESSAGE, "Mara Quill"));
        standing(motor, OrderStanding.HERE, NextStep.MAKE_VISIT);
        refused("part-order.visit-before-part", () -> orders.secondVisit(motor, 60, today.day()));
        UUID second = shop.in(tenant, () -> orders.secondVisit(motor, 90, null));
        run(() -> {
            Visit made = visits.find(second).orElseThrow();
            LocalDate earliest = today.day().plusDays(5);
            assertEquals(VisitKind.EXTRA, made.kind());
            assertEquals(visit, made.answersId().orElseThrow());
            assertEquals(Window.ofDays(earliest, earliest.plusDays(14)), made.window());
            assertEquals(
                    "Second visit, with: Inducer motor (2), Gasket (1)",
                    made.note().orElseThrow());
            assertEquals(second, lists.one(gasket).orElseThrow().second().visitId());
            assertEquals(2, lists.ofVisits(List.of(second)).size());
        });
        standing(motor, OrderStanding.PLANNED, NextStep.GIVE_DAY);
        refused("part-order.visit-there", () -> orders.secondVisit(gasket, 60, null));
        run(() -> visits.cancel(second, today.day(), "Moved away"));
        standing(motor, OrderStanding.HERE, NextStep.MAKE_VISIT);
        UUID third = shop.in(tenant, () -> orders.secondVisit(motor, 60, null));
        run(() -> visits.close(third, today.day()));
        standing(motor, OrderStanding.USED, NextStep.NOTHING);
        standing(gasket, OrderStanding.COMING, NextStep.WAIT);
        run(() -> {
            assertEquals(
                    List.of(gasket), lists.open().stream().map(PartOrder::id).toList());
            assertEquals(
                    List.of(motor), lists.over(0, 9).stream().map(PartOrder::id).toList());
            assertEquals(new OrderLists.Counts(1, 0, 0), lists.counts(today.day()));
            assertEquals(
                    new OrderLists.Counts(1, 1, 0), lists.counts(today.day().plusDays(6)));
        });
    }

    @Test
    void what_does_not_come_is_given_up_and_a_supplier_may_say_another_day() {
        open(VisitKind.CALL);
        UUID motor = order(MOTOR, ONE, 1);
        run(() -> orders.promise(motor, today.day().plusDays(9), 0));
        refused("changed-meanwhile", () -> orders.promise(motor, today.day().plusDays(3), 0));
        run(() -> assertEquals(
                today.day().plusDays(9), lists.one(motor).orElseThrow().expectedOn()));
        run(() -> orders.giveUp(motor, "No longer made"));
        standing(motor, OrderStanding.GIVEN_UP, NextStep.NOTHING);
        refused("part-order.nothing-to-come", () -> orders.giveUp(motor, "Twice"));
        refused("part-order.over", () -> orders.secondVisit(motor, 60, null));
        refused("part-order.over", () -> orders.tell(motor, ToldHow.CALL, "Mara Quill"));
    }

    @Test
    void an_order_says_what_is_missing_of_it() {
        open(VisitKind.CALL);
        NewOrder wrong =
                new NewOrder(visit, UUID.randomUUID(), "no-such", BigDecimal.ZERO, " ", today().minusDays(1), null);
        List<String> said =
                assertThrows(Refused.class, () -> run(() -> orders.order(UUID.randomUUID(), wrong))).refusals().stream()
                        .map(one -> one.code() + " " + one.field())
                        .toList();
        assertEquals(
                List.of(
                        "stock.part-not-found part",
                        "stock.quantity quantity",
                        "part-order.from-whom supplier",
                        "part-order.expected-before expected",
                        "closeout.equipment-not-found equipment"),
                said);
    }

    private LocalDate today() {
        return shop.in(tenant, () -> today.day());
    }

    @Test
    void what_came_for_the_second_visit_is_taken_along() {
        open(VisitKind.CALL);
        UUID motor = order(MOTOR, TWO, 0);
        run(() -> orders.arrive(UUID.randomUUID(), motor, TWO, shelf));
        UUID second = shop.in(tenant, () -> orders.secondVisit(motor, 60, null));
        run(() -> {
            assertEquals(0, needs.in(Window.ofDay(today.day())).size());
            appoint(second);
            assertEquals(
                    TWO,
                    needs.in(Window.ofDay(today.day())).get(Shop.TECHNICIAN).get(MOTOR));
        });
    }

    @Test
    void a_visit_that_is_still_to_be_kept_uses_what_came_for_it() {
        open(VisitKind.CALL);
        visit = shop.in(
                tenant,
                () -> visits.make(new NewVisit(
                                shop.home("ON"),
                                null,
                                VisitKind.EXTRA,
                                Window.ofDays(today.day(), today.day().plusDays(14)),
                                90,
                                null,
                                "Estimate 7: a new motor",
                                List.of()))
                        .id());
        UUID motor = order(MOTOR, TWO, 0);
        run(() -> orders.arrive(UUID.randomUUID(), motor, TWO, shelf));
        standing(motor, OrderStanding.PLANNED, NextStep.TELL);
        run(() -> orders.tell(motor, ToldHow.CALL, "Mara Quill"));
        standing(motor, OrderStanding.PLANNED, NextStep.GIVE_DAY);
        run(() -> assertEquals(0, needs.in(Window.ofDay(today.day())).size()));
        run(() -> {
            appoint(visit);
            assertEquals(
                    TWO,
                    needs.in(Window.ofDay(today.day())).get(Shop.TECHNICIAN).get(MOTOR));
        });
        standing(motor, OrderStanding.PLANNED, NextStep.GO);
        run(() -> visits.close(visit, today.day()));
        standing(motor, OrderStanding.HERE, NextStep.MAKE_VISIT);
        run(() -> {
            rows.createNativeQuery(
                            "insert into closure (visit_id, home_id, technician_id, day, minutes, minutes_planned,"
                                    + " extra_minutes, received_by, closed_at) select id, home_id, :technician, :day, 90, 90, 0, 'Mara Quill',"
                                    + " now() from visit where id = :visit")
                    .setParameter("technician", Shop.TECHNICIAN)
                    .setParameter("day", today.day())
                    .setParameter("visit", visit)
                    .executeUpdate();
            rows.createNativeQuery("insert into part_used (id, visit_id, part_code, quantity, place_id, why)"
                            + " values (uuidv7(), :visit, :part, 1, :place, 'repair')")
                    .setParameter("visit", visit)
                    .setParameter("part", MOTOR)
                    .setParameter("place", van)
                    .executeUpdate();
        });
        standing(motor, OrderStanding.HERE, NextStep.MAKE_VISIT);
        run(() -> rows.createNativeQuery("update part_used set quantity = 2 where visit_id = :visit")
                .setParameter("visit", visit)
                .executeUpdate());
        standing(motor, OrderStanding.USED, NextStep.NOTHING);
        run(() -> assertEquals(List.of(), lists.open()));
    }

    private void appoint(UUID second) {
        rows.createNativeQuery("insert into appointment (visit_id, technician_id, day, starts, ends)"
                        + " values (:visit, :technician, :day, time '09:00', time '10:00')")
                .setParameter("visit", second)
                .setParameter("technician", Shop.TECHNICIAN)
                .setParameter("day", today.day())
                .executeUpdate();
    }
}
