package changeover.scheduling.dayplan.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.words.Constraints;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.Need;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class TwoTogetherTest extends ASpring {

    @Test
    void two_go_together_and_neither_is_sent_elsewhere_meanwhile() {
        UUID heavy = waiting(1, Window.ofDay(MONDAY), 120).getFirst();
        UUID other = waiting(1, Window.ofDay(MONDAY), 60).getFirst();
        shop.in(
                tenant,
                () -> needs.write(
                        heavy,
                        new Need(2, Set.of(), LocalTime.of(9, 0), LocalTime.of(9, 0)),
                        "A long ladder",
                        new FilledOn(-1)));
        UUID run = planned(question(Set.of()));
        shop.in(tenant, () -> acceptance.accept(run, Set.of(heavy)));
        var first = shop.in(tenant, () -> appointments.of(heavy)).orElseThrow();
        var second = shop.in(tenant, () -> seconds.of(heavy)).orElseThrow();
        assertEquals(LocalTime.of(9, 0), first.starts());
        assertEquals(first.starts(), second.starts());
        assertEquals(
                List.of(heavy),
                shop.in(tenant, () -> days.of(second.technicianId(), MONDAY)).stops().stream()
                        .map(stop -> stop.visitId())
                        .toList());
        var failure = assertThrows(
                Exception.class,
                () -> shop.in(
                        tenant,
                        () -> appointments.give(
                                other,
                                new Appointments.Slot(second.technicianId(), MONDAY, LocalTime.of(10, 0), null))));
        assertEquals(
                "constraint.second_is_elsewhere",
                Constraints.refusal(failure).map(Refusal::code).orElseThrow());
        shop.in(
                tenant,
                () -> appointments.give(
                        heavy, new Appointments.Slot(first.technicianId(), MONDAY, LocalTime.of(13, 0), null)));
        assertEquals(
                LocalTime.of(13, 0),
                shop.in(tenant, () -> seconds.of(heavy)).orElseThrow().starts());
        shop.in(tenant, () -> {
            appointments.takeOff(heavy);
            return heavy;
        });
        assertTrue(shop.in(tenant, () -> seconds.of(heavy)).isEmpty());
    }
}
