package changeover.scheduling.dayplan.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.scheduling.dayplan.change.HeldDay.Held;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** One visit more, or one technician less, on a straight road with a place every ten minutes. */
class InsertionsTest extends AStraightRoad {

    @Test
    void the_gap_in_a_day_is_found_with_what_it_costs_and_nobody_moves() {
        HeldDay ida = day(IDA, held(1, "08:30", 60, 2, true), held(2, "11:00", 60, 2, true));
        Insertions.Offer offer = Insertions.offers(List.of(ida), wanted(60, 3, "08:00", "gas"), ROADS, 3)
                .getFirst();
        assertEquals(at("09:40"), offer.starts());
        assertEquals(20, offer.road());
        assertEquals(List.of(), offer.moved());
        assertTrue(Insertions.offers(List.of(ida), wanted(60, 3, "08:00", "electrical"), ROADS, 3)
                .isEmpty());
    }

    @Test
    void whoever_was_told_an_hour_keeps_it_and_who_was_not_may_begin_later() {
        HeldDay loose = day(IDA, held(1, "08:30", 120, 1, false), held(2, "10:40", 60, 1, false));
        List<Insertions.Offer> offers = Insertions.offers(List.of(loose), wanted(60, 1, "08:10"), ROADS, 3);
        assertEquals(3, offers.size());
        Insertions.Offer first = offers.stream()
                .filter(offer -> offer.starts() == at("08:10"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                List.of(
                        new Insertions.Moved(new UUID(2, 1), at("08:30"), at("09:10")),
                        new Insertions.Moved(new UUID(2, 2), at("10:40"), at("11:10"))),
                first.moved());
        HeldDay told = day(IDA, held(1, "08:30", 120, 1, true), held(2, "10:40", 60, 1, true));
        assertTrue(Insertions.offers(List.of(told), wanted(60, 1, "08:10"), ROADS, 3).stream()
                .allMatch(offer -> offer.moved().isEmpty() && offer.starts() >= at("11:40")));
    }

    @Test
    void a_lunch_that_was_there_stays_there_and_the_day_ends_in_time() {
        HeldDay full = day(IDA, held(1, "08:10", 170, 1, true), held(2, "12:30", 190, 1, true));
        assertTrue(Insertions.offers(List.of(full), wanted(75, 1, "08:00"), ROADS, 3)
                .isEmpty());
        assertEquals(
                1,
                Insertions.offers(List.of(full), wanted(45, 1, "08:00"), ROADS, 3)
                        .size());
    }

    /** Random days: an hour that stays has not moved in any offer, and no two visits meet. */
    @Test
    void no_offer_moves_what_stays_or_sends_anybody_to_two_places() {
        var random = new Random(11);
        for (int trial = 0; trial < 2000; trial++) {
            var held = new ArrayList<Held>();
            int free = 490;
            for (int number = 0; number < random.nextInt(6); number++) {
                int starts = free + 5 * random.nextInt(10) + 110;
                int minutes = 15 + 5 * random.nextInt(8);
                held.add(new Held(
                        new UUID(2, number),
                        starts,
                        starts + minutes,
                        random.nextInt(12),
                        Set.of(),
                        random.nextBoolean(),
                        false,
                        0,
                        24 * 60,
                        1));
                free = starts + minutes;
            }
            HeldDay day = new HeldDay(IDA, Set.of(), 0, 480, 1400, 0, 0, false, held);
            for (var offer : Insertions.offers(List.of(day), wanted(45, random.nextInt(12), "09:00"), ROADS, 9)) {
                List<Held> then = offer.day().held();
                for (Held one : held) {
                    Held after = then.stream()
                            .filter(other -> other.visit().equals(one.visit()))
                            .findFirst()
                            .orElseThrow();
                    assertTrue(!one.stays() || after.starts() == one.starts(), "moved: " + one);
                    assertTrue(after.starts() >= one.starts());
                }
                for (int at = 1; at < then.size(); at++) {
                    Held before = then.get(at - 1);
                    int road = ROADS.minutes(before.place(), then.get(at).place());
                    assertTrue(before.ends() + road <= then.get(at).starts(), "met: " + then);
                }
            }
        }
    }

    @Test
    void nobody_who_has_long_been_free_is_at_the_door_before_the_road_from_now_on_is_driven() {
        HeldDay idle = dayAt("13:00", IDA);
        assertEquals(
                at("13:30"),
                Insertions.offers(List.of(idle), wanted(60, 3, "13:00"), ROADS, 3)
                        .getFirst()
                        .starts());
        HeldDay done = dayAt("13:00", IDA, held(1, "08:30", 60, 5, true), held(2, "14:45", 30, 3, true));
        List<Insertions.Offer> offers = Insertions.offers(List.of(done), wanted(60, 3, "13:00"), ROADS, 3);
        assertEquals(at("13:20"), offers.getFirst().starts());
        assertEquals(1, offers.size(), "after 14:45 the day is over");
        assertTrue(Insertions.offers(List.of(done), wanted(90, 3, "13:00"), ROADS, 3).stream()
                .noneMatch(offer -> offer.starts() < at("14:45")));
    }

    @Test
    void an_hour_nobody_was_told_is_shared_out_to_when_it_can_be_reached_from_now_on() {
        HeldDay ill = dayAt("10:00", IDA, held(1, "10:10", 60, 4, false), held(2, "10:20", 60, 4, true));
        SharedOut shared = SharedOut.of(ill, List.of(dayAt("10:00", BEN)), ROADS);
        assertNull(shared.shares().get(1).technician(), "told 10:20, and the road takes forty minutes");
        assertEquals(at("10:40"), shared.shares().getFirst().starts());
    }

    /** Against every five minutes of the day tried one after another, driven from where somebody is now. */
    @Test
    void the_first_hour_offered_is_the_first_that_anybody_can_keep_from_now_on() {
        var random = new Random(23);
        int found = 0;
        for (int trial = 0; trial < 3000; trial++) {
            var held = new ArrayList<Held>();
            int free = 480;
            int here = 0;
            for (int number = 0; number < random.nextInt(6); number++) {
                int place = random.nextInt(12);
                int starts = free + ROADS.minutes(here, place) + 5 * random.nextInt(20);
                int minutes = 15 + 5 * random.nextInt(8);
                held.add(new Held(
                        new UUID(2, number), starts, starts + minutes, place, Set.of(), true, true, 0, 24 * 60, 1));
                free = starts + minutes;
                here = place;
            }
            int now = 5 * random.nextInt(200);
            var day = new HeldDay(IDA, Set.of(), 0, 480, 1300, 0, now, false, held);
            var wanted = new Insertions.Wanted(new UUID(3, 1), 45, Set.of(), random.nextInt(12), 1, now, 24 * 60);
            int offered = Insertions.offers(List.of(day), wanted, ROADS, 9).stream()
                    .mapToInt(Insertions.Offer::starts)
                    .min()
                    .orElse(-1);
            assertEquals(tried(day, wanted), offered, day + " " + wanted);
            found += offered < 0 ? 0 : 1;
        }
        assertTrue(found > 1000 && found < 3000);
    }

    private static int tried(HeldDay day, Insertions.Wanted wanted) {
        for (int starts = wanted.earliest(); starts < 24 * 60; starts += 5) {
            int free = Math.max(480, day.now());
            int here = 0;
            boolean put = false;
            boolean keeps = true;
            for (Held next : day.held()) {
                if (!put && starts <= next.starts()) {
                    keeps &= free + ROADS.minutes(here, wanted.place()) <= starts;
                    free = starts + wanted.minutes();
                    here = wanted.place();
                    put = true;
                    keeps &= free + ROADS.minutes(here, next.place()) <= next.starts();
                }
                free = Math.max(day.now(), next.ends());
                here = next.place();
            }
            if (!put) {
                keeps &= free + ROADS.minutes(here, wanted.place()) <= starts;
                free = starts + wanted.minutes();
                here = wanted.place();
            }
            int back = day.held().isEmpty() ? 480 : day.back(ROADS);
            if (keeps && free + ROADS.minutes(here, 0) <= Math.max(1300, back)) {
                return starts;
            }
        }
        return -1;
    }

    @Test
    void a_day_is_shared_out_the_told_hours_first_and_the_rest_goes_back_to_the_season() {
        HeldDay ill =
                day(IDA, held(1, "09:00", 60, 2, true), held(2, "10:30", 60, 2, false), held(3, "13:00", 60, 2, true));
        HeldDay ben = day(BEN, held(4, "12:50", 120, 2, true));
        SharedOut shared = SharedOut.of(ill, List.of(ben), ROADS);
        SharedOut.Share first = shared.shares().getFirst();
        assertEquals(BEN, first.technician());
        assertEquals(at("09:00"), first.starts());
        assertEquals(BEN, shared.shares().get(1).technician());
        assertNull(shared.shares().get(2).technician(), "the told hour is another's");
        assertNull(SharedOut.of(ill, List.of(), ROADS).shares().getFirst().technician());
    }
}
