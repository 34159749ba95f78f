package changeover.scheduling.partners;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.tenants.SettableClock;
import changeover.contracts.words.Constraints;
import changeover.scheduling.Shop;
import changeover.scheduling.visits.LastTimes;
import changeover.scheduling.visits.LastTimes.Told;
import changeover.scheduling.visits.Visits;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A year sold on 16 November 2026 whose first visit, the cooling changeover of 2027, is given to a partner. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class GivenVisitsTest {

    private static final LocalDate SOLD = LocalDate.of(2026, 11, 16);
    private static final LocalDate PARTNERS_DAY = LocalDate.of(2027, 6, 1);

    @Inject
    Shop shop;

    @Inject
    Licensed licensed;

    @Inject
    Partners partners;

    @Inject
    Agreements agreements;

    @Inject
    Visits visits;

    @Inject
    LastTimes times;

    @Inject
    SettableClock clock;

    @Inject
    EntityManager rows;

    private record At(UUID tenant, UUID home, UUID agreement, UUID first, UUID second) {}

    @AfterEach
    void theRealDayAgain() {
        clock.reset();
    }

    private At sold() {
        clock.setDay(LocalDate.of(2026, 11, 20));
        UUID tenant = shop.open("CA-ON");
        return shop.in(tenant, () -> {
            UUID home = shop.home("ON");
            UUID agreement = shop.sell(home, shop.plan().id(), SOLD);
            List<UUID> both = ids("select id from visit order by window_from");
            return new At(tenant, home, agreement, both.getFirst(), both.get(1));
        });
    }

    private void give(At at) {
        shop.in(at.tenant, () -> licensed.give(at.first, licensed.partner("Fulton Reyes"), PARTNERS_DAY));
    }

    @SuppressWarnings("unchecked")
    private List<UUID> ids(String sql) {
        return rows.createNativeQuery(sql, UUID.class).getResultList();
    }

    private long count(At at, String sql) {
        return shop.in(
                at.tenant,
                () -> ((Number) rows.createNativeQuery("select count(*) from " + sql)
                                .getSingleResult())
                        .longValue());
    }

    private void tell(At at, String kind, String task, @Nullable LocalDate day) {
        shop.in(at.tenant, () -> {
            UUID unit =
                    ids("select id from equipment where kind = '" + kind + "'").getFirst();
            times.tell(List.of(new Told(at.home, unit, task, day)));
            return 0;
        });
    }

    @Test
    void given_to_several_at_once_one_has_it_and_the_others_are_told() throws Exception {
        At at = sold();
        List<UUID> hands = shop.in(
                at.tenant,
                () -> IntStream.range(0, 6)
                        .mapToObj(number -> licensed.partner("Partner " + number))
                        .toList());
        List<String> refused = new ArrayList<>();
        try (var threads = Executors.newFixedThreadPool(6)) {
            var answers = threads.invokeAll(hands.stream()
                    .map(partner -> (Callable<UUID>)
                            () -> shop.in(at.tenant, () -> licensed.give(at.first, partner, PARTNERS_DAY)))
                    .toList());
            for (var answer : answers) {
                try {
                    answer.get();
                } catch (ExecutionException cause) {
                    refused.add(Constraints.name(cause).orElse(String.valueOf(cause)));
                }
            }
        }
        assertEquals(
                IntStream.range(0, 5).mapToObj(_ -> "a_visit_is_in_one_hand").toList(), refused);
        assertEquals(1, count(at, "partner_visit"));
    }

    @Test
    void taken_back_and_said_to_be_done_at_once_one_of_both_holds() throws Exception {
        for (int time = 0; time < 5; time++) {
            At at = sold();
            give(at);
            clock.setDay(PARTNERS_DAY);
            Callable<Integer> back = () -> shop.in(at.tenant, () -> {
                licensed.takeBack(at.first);
                return 1;
            });
            Callable<Integer> done = () -> shop.in(at.tenant, () -> {
                licensed.done(at.first, PARTNERS_DAY);
                visits.close(at.first, PARTNERS_DAY);
                return 1;
            });
            try (var threads = Executors.newFixedThreadPool(2)) {
                threads.invokeAll(List.of(back, done));
            }
            assertEquals(
                    1, count(at, "(select id from partner_visit_end union all select id from partner_visit_done) one"));
        }
    }

    @Test
    void it_stays_when_the_agreement_ends_after_the_partners_day_and_falls_when_it_ends_before() {
        At later = sold();
        give(later);
        shop.in(later.tenant, () -> {
            agreements.end(later.agreement, LocalDate.of(2027, 6, 15), "moved away");
            return 0;
        });
        assertEquals(List.of(later.second), shop.in(later.tenant, () -> ids("select visit_id from visit_ending")));
        At before = sold();
        give(before);
        shop.in(before.tenant, () -> {
            agreements.end(before.agreement, PARTNERS_DAY, "moved away");
            return 0;
        });
        assertEquals(2, count(before, "visit_ending"));
    }

    @Test
    void what_is_told_of_a_last_time_takes_no_work_off_it() {
        At at = sold();
        give(at);
        String work = "visit_task where task_code = 'test-cool' and visit_id = '" + at.first + "'";
        assertEquals(1, count(at, work));
        tell(at, "test-pump", "test-cool", LocalDate.of(2026, 5, 4));
        assertEquals(1, count(at, work));
    }

    @Test
    void what_nobody_knows_is_read_at_the_next_visit_of_our_own_and_counted_once() {
        At at = sold();
        give(at);
        tell(at, "test-humidifier", "test-pad", null);
        String reads = "visit_task where task_code = 'read-last-time' and visit_id = '";
        assertEquals(0, count(at, reads + at.first + "'"));
        assertEquals(1, count(at, reads + at.second + "'"));
        LocalDate made = LocalDate.of(2027, 10, 4);
        clock.setDay(made);
        shop.in(at.tenant, () -> {
            visits.close(at.second, made);
            return 0;
        });
        assertEquals(
                List.of(made),
                shop.in(at.tenant, () -> times.unread()).stream()
                        .map(LastTimes.Unread::visited)
                        .toList());
        tell(at, "test-humidifier", "test-pad", null);
        List<LastTimes.Unread> unread = shop.in(at.tenant, () -> times.unread());
        assertEquals(1, unread.getFirst().tasks());
        assertEquals(null, unread.getFirst().visited(), "told again that nobody knows, after that visit");
    }

    @Test
    void ended_twice_a_partner_and_a_paper_end_once() {
        At at = sold();
        shop.in(at.tenant, () -> {
            UUID partner = licensed.partner("Fulton Reyes");
            UUID paper = ids("select id from partner_paper").getFirst();
            assertTrue(partners.putAway(paper, SOLD));
            assertFalse(partners.putAway(paper, SOLD));
            assertTrue(partners.end(partner, SOLD));
            assertFalse(partners.end(partner, SOLD));
            return 0;
        });
    }
}
