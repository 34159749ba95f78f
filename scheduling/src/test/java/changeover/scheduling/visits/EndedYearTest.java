package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.calendar.DayPassed;
import changeover.contracts.tenants.SettableClock;
import changeover.scheduling.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A year sold on 16 November 2026, with both changeovers in 2027, whose agreement ends before they are over. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class EndedYearTest {

    @Inject
    Shop shop;

    @Inject
    Agreements agreements;

    @Inject
    SettableClock clock;

    @Inject
    Event<DayPassed> passed;

    @Inject
    EntityManager rows;

    @AfterEach
    void theRealDayAgain() {
        clock.reset();
    }

    private UUID soldAndEnded(LocalDate today, LocalDate ends) {
        clock.setDay(LocalDate.of(2026, 11, 20));
        UUID tenant = shop.open("CA-ON");
        UUID agreement =
                shop.in(tenant, () -> shop.sell(shop.home("ON"), shop.plan().id(), LocalDate.of(2026, 11, 16)));
        clock.setDay(today);
        shop.in(tenant, () -> {
            agreements.end(agreement, ends, "moved away");
            return 0;
        });
        return tenant;
    }

    private long fallen(UUID tenant) {
        return count(tenant, "select count(*) from visit_ending where how = 'cancelled'");
    }

    @Test
    void an_ended_agreement_lets_its_open_visits_fall() {
        LocalDate day = LocalDate.of(2027, 3, 1);
        UUID tenant = soldAndEnded(day, day);
        assertEquals(2, fallen(tenant));
        assertTrue(count(tenant, "select count(*) from household_task where due_on >= '2027-03-01'") == 0);
    }

    @Test
    void one_that_ends_later_keeps_the_visits_that_were_to_be_made_before_until_it_ends() {
        UUID tenant = soldAndEnded(LocalDate.of(2027, 3, 1), LocalDate.of(2027, 7, 1));
        assertEquals(1, fallen(tenant), "the cooling changeover is still to come, the heating one falls");
        assertEquals(0, count(tenant, """
                select count(*) from visit v join visit_ending e on e.visit_id = v.id
                 where v.window_from < date '2027-07-01'"""));
        assertTrue(count(tenant, "select count(*) from household_task where due_on >= '2027-07-01'") == 0);
        pass(tenant, LocalDate.of(2027, 6, 29));
        assertEquals(1, fallen(tenant));
        pass(tenant, LocalDate.of(2027, 6, 30));
        assertEquals(2, fallen(tenant), "nobody made it while there was time");
        pass(tenant, LocalDate.of(2027, 6, 30));
        assertEquals(2, fallen(tenant));
    }

    @Test
    void a_visit_whose_days_go_on_beyond_the_end_falls_at_once() {
        assertEquals(2, fallen(soldAndEnded(LocalDate.of(2027, 3, 1), LocalDate.of(2027, 6, 15))));
        assertEquals(1, fallen(soldAndEnded(LocalDate.of(2027, 3, 1), LocalDate.of(2027, 6, 16))));
    }

    private void pass(UUID tenant, LocalDate day) {
        clock.setDay(day.plusDays(1));
        shop.in(tenant, () -> {
            passed.fire(new DayPassed(tenant.toString(), day));
            return 0;
        });
    }

    private long count(UUID tenant, String sql) {
        return shop.in(tenant, () -> ((Number) rows.createNativeQuery(sql).getSingleResult()).longValue());
    }
}
