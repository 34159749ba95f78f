package changeover.scheduling.dayplan.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.scheduling.dayplan.change.HeldDay.Held;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A visit that two make, and whoever is on call. */
class TwoInsertedTest extends AStraightRoad {

    @Test
    void two_go_at_the_first_hour_at_which_both_can_be_there_and_neither_goes_alone() {
        HeldDay ida = day(IDA, held(1, "08:30", 60, 2, true));
        HeldDay ben = day(BEN, held(2, "09:30", 60, 4, true));
        Insertions.Offer offer = Insertions.offers(List.of(ida, ben), forTwo(60, 3, "08:00"), ROADS, 3)
                .getFirst();
        assertEquals(at("10:40"), offer.starts());
        assertEquals(Set.of(IDA, BEN), Set.of(offer.technician(), offer.second().orElseThrow()));
        assertTrue(Insertions.offers(List.of(ida), forTwo(60, 3, "08:00"), ROADS, 3)
                .isEmpty());
        HeldDay untrained = new HeldDay(BEN, Set.of(), 0, 480, 960, 30, 0, false, ben.held());
        assertTrue(Insertions.offers(List.of(ida, untrained), forTwo(60, 3, "08:00", "gas"), ROADS, 9).stream()
                .allMatch(one -> one.technician().equals(IDA)));
    }

    /** Two random days: whoever leads and whoever goes along keep their hours, and both reach the door in time. */
    @Test
    void no_way_for_two_sends_either_to_two_places() {
        var random = new Random(31);
        int found = 0;
        for (int trial = 0; trial < 800; trial++) {
            List<HeldDay> days = List.of(random(random, IDA), random(random, BEN));
            for (var offer : Insertions.offers(days, forTwo(45, random.nextInt(12), "08:00"), ROADS, 9)) {
                found++;
                for (HeldDay then : List.of(offer.day(), Objects.requireNonNull(offer.along()))) {
                    List<Held> held = then.held();
                    assertTrue(held.stream()
                            .anyMatch(one -> one.visit().equals(new UUID(3, 1)) && one.starts() == offer.starts()));
                    for (int at = 1; at < held.size(); at++) {
                        int road = ROADS.minutes(
                                held.get(at - 1).place(), held.get(at).place());
                        assertTrue(
                                held.get(at - 1).ends() + road <= held.get(at).starts(), "met: " + then);
                    }
                }
            }
        }
        assertTrue(found > 500);
    }

    private static HeldDay random(Random random, UUID who) {
        var held = new ArrayList<Held>();
        int free = 480;
        int here = 0;
        for (int number = 0; number < random.nextInt(4); number++) {
            int place = random.nextInt(12);
            int starts = free + ROADS.minutes(here, place) + 5 * random.nextInt(20);
            boolean stays = random.nextBoolean();
            held.add(new Held(
                    new UUID(who.getLeastSignificantBits() + 5, number),
                    starts,
                    starts + 30,
                    place,
                    Set.of(),
                    stays,
                    stays,
                    0,
                    24 * 60,
                    1));
            free = starts + 30;
            here = place;
        }
        return new HeldDay(who, Set.of(), 0, 480, 1200, 0, 0, false, held);
    }

    @Test
    void whoever_is_on_call_comes_after_those_who_work() {
        HeldDay works = day(IDA, held(1, "08:30", 60, 2, true));
        HeldDay called = new HeldDay(BEN, Set.of("gas"), 0, 0, 1435, 30, at("13:00"), true, List.of());
        List<Insertions.Offer> offers = Insertions.offers(List.of(works, called), wanted(60, 3, "13:00"), ROADS, 3);
        assertEquals(IDA, offers.getFirst().technician());
        assertTrue(offers.getLast().onCall());
        assertEquals(at("13:30"), offers.getLast().starts());
    }

    @Test
    void what_two_make_is_shared_out_to_two_and_a_place_beside_somebody_to_one() {
        Held heavy = new Held(new UUID(2, 1), at("10:00"), at("11:00"), 2, Set.of("gas"), true, true, 0, 24 * 60, 2);
        UUID cleo = new UUID(1, 3);
        SharedOut two = SharedOut.of(day(IDA, heavy), List.of(day(BEN), day(cleo)), ROADS);
        assertEquals(BEN, two.shares().getFirst().technician());
        assertEquals(cleo, two.shares().getFirst().second());
        assertNull(SharedOut.of(day(IDA, heavy), List.of(day(BEN)), ROADS)
                .shares()
                .getFirst()
                .technician());
        HeldDay untrained = new HeldDay(BEN, Set.of(), 0, 480, 960, 30, 0, false, List.of());
        SharedOut.Share along = SharedOut.of(day(IDA, heavy), Set.of(heavy.visit()), List.of(untrained), ROADS)
                .shares()
                .getFirst();
        assertTrue(along.along());
        assertEquals(BEN, along.technician());
        assertEquals(at("10:00"), along.starts());
    }
}
