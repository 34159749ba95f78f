package changeover.scheduling.calls;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.words.Constraints;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.scheduling.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class OnCallsTest {

    private static final LocalDate DAY = LocalDate.of(2027, 1, 11);

    @Inject
    Shop shop;

    @Inject
    OnCalls onCalls;

    @Test
    void one_person_is_on_call_a_day() {
        UUID tenant = shop.open("CA-ON");
        var week = new Window(DAY, DAY.plusDays(7));
        OnCall turn = shop.in(tenant, () -> onCalls.give(Shop.TECHNICIAN, week));
        assertEquals(
                "Ida Roe",
                shop.in(tenant, () -> onCalls.on(DAY.plusDays(6))).orElseThrow().name());
        assertTrue(shop.in(tenant, () -> onCalls.on(DAY.plusDays(7))).isEmpty());
        var failure = assertThrows(
                Exception.class,
                () -> shop.in(tenant, () -> onCalls.give(Shop.TECHNICIAN, Window.ofDay(DAY.plusDays(3)))));
        assertEquals(
                "constraint.somebody_is_on_call_already",
                Constraints.refusal(failure).map(Refusal::code).orElseThrow());
        assertEquals(
                "on-call.nobody",
                assertThrows(Refused.class, () -> shop.in(tenant, () -> onCalls.give(UUID.randomUUID(), week)))
                        .first()
                        .code());
        assertTrue(shop.in(tenant, () -> onCalls.takeAway(turn.id())));
        assertFalse(shop.in(tenant, () -> onCalls.takeAway(turn.id())));
    }

    /** A turn of one day rings from its first minute until noon after it, and nobody else's does. */
    @Test
    void the_night_of_the_last_day_runs_into_the_morning() {
        UUID tenant = shop.open("CA-ON");
        var _ = shop.in(tenant, () -> onCalls.give(Shop.TECHNICIAN, Window.ofDay(DAY)));
        for (String at : List.of("2027-01-11T00:00", "2027-01-11T23:59", "2027-01-12T03:20", "2027-01-12T11:59")) {
            assertTrue(shop.in(tenant, () -> onCalls.rings(Shop.TECHNICIAN, LocalDateTime.parse(at))), at);
            assertFalse(shop.in(tenant, () -> onCalls.rings(UUID.randomUUID(), LocalDateTime.parse(at))), at);
        }
        for (String at : List.of("2027-01-10T23:59", "2027-01-12T12:00")) {
            assertFalse(shop.in(tenant, () -> onCalls.rings(Shop.TECHNICIAN, LocalDateTime.parse(at))), at);
        }
    }
}
