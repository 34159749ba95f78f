package changeover.scheduling.households;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Interval;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A household's list follows what happens to its filters. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HouseholdRhythmTest extends HouseholdTold {

    @Test
    void a_change_told_early_moves_the_looks_after_it_and_a_season_stays() {
        At at = open("1");
        assertEquals(
                List.of("01-10 replace", "02-10 check", "03-10 check", "04-10 replace", "05-10 check", "06-10 check"),
                ahead(at, "filter-thin", 6));
        assertEquals(List.of("01-10 do", "03-10 do", "05-10 do"), ahead(at, "head-screens", 3));
        tell(at, LocalDate.of(2026, 3, 3), "grey", true);
        assertEquals(
                List.of("01-10 replace", "02-10 check", "04-03 check", "05-03 check", "06-03 replace", "07-03 check"),
                ahead(at, "filter-thin", 6));
        done(at, "head-screens", LocalDate.of(2026, 3, 25));
        assertEquals(List.of("01-10 do", "03-10 do", "05-25 do", "07-25 do"), ahead(at, "head-screens", 4));
        assertEquals(List.of("04-15 do"), ahead(at, "outdoor-clear", 3).subList(0, 1));
    }

    @Test
    void two_filters_seen_grey_and_the_list_follows_the_homes_own_rhythm_until_a_person_decides() {
        At at = open("4");
        tell(at, LocalDate.of(2026, 1, 12), null, true);
        tell(at, LocalDate.of(2026, 3, 16), "grey", true);
        assertEquals(SlotSeen.Follows.SOLD, rhythm(at).seen().follows());
        tell(at, LocalDate.of(2026, 5, 25), "grey", true);
        SlotRhythm learned = rhythm(at);
        assertEquals(SlotSeen.Follows.LEARNED, learned.seen().follows());
        assertEquals(0, learned.others());
        Cadence.LookThenChange advice = learned.recommended();
        assertEquals(
                List.of(
                        LocalDate.of(2026, 5, 25)
                                        .plusDays(advice.lookDays())
                                        .toString()
                                        .substring(5) + " check",
                        LocalDate.of(2026, 5, 25)
                                        .plusDays(advice.changeDays())
                                        .toString()
                                        .substring(5) + " replace"),
                after(at, LocalDate.of(2026, 5, 25)).subList(0, 2));
        shop.in(at.tenant(), () -> {
            Interval.Decided decided = new Interval.Decided("Ida Roe, the owner", LocalDate.of(2026, 5, 25));
            intervals.keep(new Interval(
                    "filter-deep", at.slot(), new Cadence.LookThenChange(35, 42), "two dogs in summer", null, decided));
            assertEquals(
                    decided,
                    intervals.all().stream()
                            .filter(one -> at.slot().equals(one.equipmentId()))
                            .findFirst()
                            .orElseThrow()
                            .decided());
            rounds.follow(List.of(slots.find(at.slot()).orElseThrow()));
            return 0;
        });
        assertEquals(SlotSeen.Follows.WORD, rhythm(at).seen().follows());
        assertEquals(
                List.of("06-29 check", "07-06 replace", "08-10 check", "08-17 replace"),
                after(at, LocalDate.of(2026, 5, 25)).subList(0, 4));
    }

    @Test
    void a_word_is_followed_from_the_agreements_first_day_where_nobody_knows_of_a_change() {
        At at = open("1");
        List<String> sold = said(at, "filter-thin", SOLD);
        clock.setDay(SOLD.plusDays(3));
        shop.in(at.tenant(), () -> {
            intervals.keep(new Interval(
                    "filter-thin",
                    at.slot(),
                    new Cadence.LookThenChange(56, 84),
                    "a new house, no dust yet",
                    null,
                    new Interval.Decided("Ida Roe, the owner", SOLD.plusDays(3))));
            rounds.follow(List.of(slots.find(at.slot()).orElseThrow()));
            return 0;
        });
        assertEquals(
                List.of(SOLD.plusDays(56) + " check", SOLD.plusDays(84) + " replace", SOLD.plusDays(84 + 56) + " check")
                        .stream()
                        .map(day -> day.substring(5))
                        .toList(),
                said(at, "filter-thin", SOLD.plusDays(4)).subList(0, 3));
        shop.in(at.tenant(), () -> {
            assertTrue(intervals.forget("filter-thin", at.slot()));
            rounds.wordEnded(slots.find(at.slot()).orElseThrow());
            return 0;
        });
        assertEquals(sold.subList(1, 5), said(at, "filter-thin", SOLD).subList(1, 5), "back to what was sold");
    }

    @Test
    void what_is_sold_next_counts_from_the_last_change() {
        At at = open("1");
        tell(at, LocalDate.of(2026, 12, 20), "clean", true);
        clock.setDay(LocalDate.of(2026, 12, 28));
        shop.in(at.tenant(), () -> shop.sell(at.home(), plan(), LocalDate.of(2027, 1, 10)));
        assertEquals(
                List.of("01-20 check", "02-20 check", "03-20 replace"),
                said(at, "filter-thin", LocalDate.of(2027, 1, 10)).subList(0, 3));
    }

    @Test
    void what_was_told_by_mistake_is_taken_back_and_what_says_nothing_is_refused() {
        At at = open("1");
        clock.setDay(LocalDate.of(2026, 2, 1));
        List<String> before = said(at, "filter-thin", SOLD);
        tell(at, LocalDate.of(2026, 2, 1), "grey", true);
        assertEquals(1, rhythm(at).seen().told().size());
        assertNotEquals(before, said(at, "filter-thin", SOLD));
        shop.in(at.tenant(), () -> {
            FilterSlot slot = slots.find(at.slot()).orElseThrow();
            UUID look =
                    rhythms.of(at.slot()).orElseThrow().seen().told().getFirst().id();
            assertTrue(rounds.takeBack(slot, look));
            assertFalse(rounds.takeBack(slot, look));
            assertEquals(
                    0L,
                    rows.createNativeQuery("select count(*) from unit_history where equipment_id = :slot", Long.class)
                            .setParameter("slot", at.slot())
                            .getSingleResult());
            return 0;
        });
        assertEquals(0, rhythm(at).seen().told().size());
        assertEquals(before, said(at, "filter-thin", SOLD), "the list is as if it had never been told");
        tell(at, LocalDate.of(2026, 1, 20), "grey", true);
        List<String> told = said(at, "filter-thin", LocalDate.of(2026, 3, 1));
        tell(at, LocalDate.of(2026, 2, 15), "grey", true);
        shop.in(at.tenant(), () -> {
            UUID last =
                    rhythms.of(at.slot()).orElseThrow().seen().told().getLast().id();
            assertTrue(rounds.takeBack(slots.find(at.slot()).orElseThrow(), last));
            return 0;
        });
        assertEquals(told, said(at, "filter-thin", LocalDate.of(2026, 3, 1)), "back to the change before it");
        Refused refused = assertThrows(Refused.class, () -> tell(at, LocalDate.of(2026, 2, 1), null, false));
        assertEquals("filter.says-nothing", refused.first().code());
    }

    @Test
    void homes_alike_lend_a_weak_belief_and_the_accepted_chance_is_the_businesss() {
        At at = open("4");
        UUID other = shop.in(at.tenant(), () -> shop.home("QC"));
        UUID slot = shop.in(at.tenant(), () -> add(other, "filter-slot", Map.of("thickness", "4", "merv", "11")));
        At there = new At(at.tenant(), other, slot);
        int before = rhythm(at).recommended().changeDays();
        int look = rhythm(at).recommended().lookDays();
        shop.in(at.tenant(), () -> {
            chance.accept(2);
            return 0;
        });
        assertEquals(2, shop.in(at.tenant(), chance::percent));
        assertTrue(rhythm(at).recommended().lookDays() < look);
        shop.in(at.tenant(), () -> {
            chance.accept(AcceptedChance.USUAL);
            return 0;
        });
        for (int month = 2; month < 7; month++) {
            tell(there, LocalDate.of(2026, month, 3), "grey", true);
        }
        assertEquals(1, rhythm(at).others());
        int after = rhythm(at).recommended().changeDays();
        assertTrue(after < before, after + " of " + before);
    }
}
