package changeover.scheduling.visits;

import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A home's year after one of its machines was taken out in the middle of it; the answers are written by hand. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class MachinesTakenOutTest extends MachinesTold {

    private static final LocalDate SUMMER = LocalDate.of(2026, 7, 1);

    @Test
    void what_is_left_is_done_at_the_same_visits() {
        check(
                List.of(found("test-pump", "test-humidifier"), read(APRIL), sold(APRIL), out("test-pump", SUMMER)),
                "2026-05-01 .. 2026-06-15: test-off",
                "2026-09-01 .. 2026-11-15: test-pad");
    }

    @Test
    void a_visit_that_was_made_keeps_what_was_done() {
        check(
                List.of(
                        found("test-pump", "test-humidifier"),
                        read(APRIL),
                        sold(APRIL),
                        firstVisitMade(LocalDate.of(2026, 5, 20)),
                        out("test-pump", SUMMER)),
                "2026-05-01 .. 2026-06-15: test-cool test-off",
                "2026-09-01 .. 2026-11-15: test-pad");
    }

    @Test
    void where_nothing_is_left_the_equipment_is_looked_over_since_the_plan_gives_the_visit() {
        check(
                List.of(found("test-pump"), read(APRIL), sold(APRIL), out("test-pump", SUMMER)),
                "2026-04-01 .. 2026-06-15: visit-look-over",
                "2026-09-01 .. 2026-11-15: visit-look-over");
    }

    @Test
    void the_machine_in_its_place_is_promised_what_was_sold_from_its_day_on() {
        check(
                List.of(
                        found("test-pump", "test-humidifier"),
                        read(APRIL),
                        sold(APRIL),
                        firstVisitMade(LocalDate.of(2026, 5, 20)),
                        out("test-pump", SUMMER),
                        found("test-pump"),
                        takenIn("test-pump", SUMMER)),
                "2026-05-01 .. 2026-06-15: test-cool test-off",
                "2026-09-01 .. 2026-11-15: test-pad test-heat",
                "not test-cool by 2026-06-15");
    }

    private Step out(String kind, LocalDate day) {
        return told -> equipment.takeOut(
                equipment.ofHome(told.home()).stream()
                        .filter(one -> one.kind().equals(kind))
                        .findFirst()
                        .orElseThrow()
                        .id(),
                day);
    }

    private Step takenIn(String kind, LocalDate day) {
        return told -> machines.takeIn(
                told.home(),
                equipment.ofHome(told.home()).stream()
                        .filter(one -> one.kind().equals(kind))
                        .findFirst()
                        .orElseThrow()
                        .id(),
                day);
    }
}
