package changeover.scheduling.intervals;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.scheduling.intervals.Rhythm.Held;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class HouseholdIntervalTest {

    private static final Limits ONE_INCH = Limits.ofThickness(1);
    private static final Limits DEEP = Limits.ofThickness(4);

    @Test
    void the_sentence_says_what_was_seen_and_what_follows() {
        says(
                ONE_INCH,
                List.of(new Seen.GreyAt(63), new Seen.GreyAt(70)),
                "Changed grey at 9 and 10_weeks: check at 7, change at 8 at the latest.",
                "Changé gris à 9 et 10_semaines_: vérifier à 7, remplacer à 8 au plus tard.");
        says(
                ONE_INCH,
                List.of(),
                "Nothing seen here yet: check at 6_weeks, change at 8 at the latest.",
                "Rien d’observé ici encore_: vérifier à 6_semaines, remplacer à 8 au plus tard.");
        says(
                ONE_INCH,
                Collections.nCopies(6, new Seen.CleanAt(91)),
                "Still clean 6 times at 13_weeks: change at 3_months at the latest, by published advice for filters of"
                        + " one inch.",
                "Encore propre 6 fois à 13_semaines_: remplacer à 3_mois au plus tard, selon les conseils publiés pour"
                        + " les filtres d’un pouce.");
        says(
                ONE_INCH,
                Collections.nCopies(6, new Seen.GreyBetween(0, 21)),
                "Grey at the first look at 3_weeks, 6 times: it turns grey within a month, change it every month.",
                "Gris au premier regard à 3_semaines, 6 fois_: il devient gris en moins d’un mois, le remplacer chaque"
                        + " mois.");
        says(
                DEEP,
                List.of(new Seen.GreyBetween(63, 91), new Seen.CleanAt(84)),
                "Clean at 9, grey at 13_weeks; still clean at 12_weeks: check at 10, change at 12 at the latest.",
                "Propre à 9, gris à 13_semaines; encore propre à 12_semaines_: vérifier à 10, remplacer à 12 au plus"
                        + " tard.");
        says(
                Limits.ofLabel(12),
                Collections.nCopies(5, new Seen.CleanAt(300)),
                "Still clean 5 times at 10_months: check at 11, change at 12 at the latest.",
                "Encore propre 5 fois à 10_mois_: vérifier à 11, remplacer à 12 au plus tard.");
    }

    @Test
    void a_short_time_is_not_said_as_nought_weeks_or_months() {
        begins(
                List.of(new Seen.GreyAt(2), new Seen.GreyAt(63)),
                "Changed grey at 2 and 63_days: ",
                "Changé gris à 2 et 63_jours_: ");
        begins(
                List.of(new Seen.CleanAt(10), new Seen.GreyAt(280)),
                "Changed grey at 40_weeks; still clean at 1_week: ",
                "Changé gris à 40_semaines; encore propre à 1_semaine_: ");
        begins(
                List.of(new Seen.GreyBetween(2, 280)),
                "Clean at 2, grey at 280_days: ",
                "Propre à 2, gris à 280_jours_: ");
    }

    @Test
    void one_change_is_said_by_itself_and_many_by_the_first_and_the_last() {
        begins(
                List.of(new Seen.GreyAt(63)),
                "Changed grey at 9_weeks: check at ",
                "Changé gris à 9_semaines_: vérifier à ");
        begins(
                List.of(
                        new Seen.GreyAt(56),
                        new Seen.GreyAt(63),
                        new Seen.GreyAt(63),
                        new Seen.GreyAt(70),
                        new Seen.GreyAt(77)),
                "Changed grey 5 times between 8 and 11_weeks: check at ",
                "Changé gris 5 fois entre 8 et 11_semaines_: vérifier à ");
        begins(
                List.of(new Seen.CleanAt(42)),
                "Still clean at 6_weeks: check at ",
                "Encore propre à 6_semaines_: vérifier à ");
    }

    private static void begins(List<Seen> seen, String english, String french) {
        HouseholdInterval interval = HouseholdInterval.of(seen, Prior.ofTheTrade(ONE_INCH), ONE_INCH, 0.15);
        String en = interval.sentence().en();
        String fr = interval.sentence().fr();
        assertTrue(en.startsWith(english.replace('_', '\u00a0')), en);
        assertTrue(fr.startsWith(french.replace('_', '\u00a0')), fr);
    }

    private static void says(Limits limits, List<Seen> seen, String english, String french) {
        HouseholdInterval interval = HouseholdInterval.of(seen, Prior.ofTheTrade(limits), limits, 0.15);
        assertEquals(english.replace('_', '\u00a0'), interval.sentence().en());
        assertEquals(french.replace('_', '\u00a0'), interval.sentence().fr());
    }

    @Test
    void the_label_stands_before_the_kind_and_nothing_is_shorter_than_a_month() {
        assertEquals(91, ONE_INCH.capDays());
        assertEquals(182, DEEP.capDays());
        assertEquals(365, Limits.ofLabel(12).capDays());
        assertEquals(31, Limits.ofLabel(1).capDays());
        assertThrows(IllegalArgumentException.class, () -> Limits.ofLabel(0));
        assertThrows(IllegalArgumentException.class, () -> Limits.ofThickness(0));
    }

    @Test
    void no_advice_is_under_a_month_past_the_longest_time_or_above_the_accepted_chance() {
        Random random = seeded("bounds");
        for (int round = 0; round < 150; round++) {
            Household home = home(random, 75, 2.5);
            Limits limits = random.nextBoolean() ? ONE_INCH : DEEP;
            Posterior posterior =
                    Posterior.of(home.looked(random.nextInt(9), 7 + random.nextInt(30), 120), Prior.ofTheTrade(limits));
            Rhythm before = Rhythm.of(posterior, limits, 0.02);
            for (double setting : new double[] {0.05, 0.15, 0.3, 0.5}) {
                Rhythm rhythm = Rhythm.of(posterior, limits, setting);
                assertTrue(rhythm.checkAfterDays() >= limits.floorDays(), rhythm.toString());
                assertTrue(rhythm.changeAfterDays() >= rhythm.checkAfterDays(), rhythm.toString());
                assertTrue(rhythm.changeAfterDays() <= limits.capDays(), rhythm.toString());
                assertTrue(rhythm.checkHeldBy() == Held.MONTH || rhythm.chanceAtCheck() <= setting, rhythm.toString());
                assertTrue(rhythm.chanceAfterCheck() <= setting, rhythm.toString());
                assertTrue(rhythm.checkAfterDays() >= before.checkAfterDays(), "a larger chance looks no earlier");
                before = rhythm;
            }
        }
    }

    @Test
    void of_many_homes_no_more_run_dirty_than_the_business_accepts() {
        Random random = seeded("accepted chance");
        Prior.Weak homes = new Prior.Weak(75, 1.4, 5, 1.3);
        double chance = 0;
        int held = 0;
        for (int round = 0; round < 300; round++) {
            Household home = home(random, 75, 1.4);
            List<Seen> seen = home.looked(random.nextInt(8), 14, 112);
            Rhythm rhythm = Rhythm.of(Posterior.of(seen, homes), DEEP, 0.15);
            if (rhythm.checkHeldBy() == Held.CHANCE) {
                chance += home.truth().greyBy(rhythm.checkAfterDays());
                held++;
            }
        }
        assertTrue(held > 200, held + " homes");
        assertTrue(chance / held < 0.17, chance / held + " of " + held + " homes");
        assertTrue(chance / held > 0.07, "too careful: " + chance / held);
    }

    @Test
    void other_homes_move_the_belief_to_where_they_lie_and_never_make_it_sure() {
        Random random = seeded("other homes");
        Prior.Weak before = Prior.ofTheTrade(ONE_INCH);
        List<List<Seen>> homes = new ArrayList<>();
        for (int home = 0; home < 30; home++) {
            homes.add(home(random, 55, 1.2).looked(5, 7, 112));
        }
        homes.add(List.of());
        Prior.Weak after = OtherHomes.belief(homes, before);
        assertEquals(55, after.scaleDays(), 8);
        assertTrue(after.scaleFactor() < before.scaleFactor() && after.scaleFactor() >= 1.25, after.toString());
        assertEquals(before, OtherHomes.belief(List.of(List.of()), before));
        List<Seen> own = Collections.nCopies(6, new Seen.GreyAt(110));
        assertTrue(Posterior.of(own, after).mode().scaleDays() > 95, "a home's own sights outweigh the others");
    }

    @Test
    void the_curve_rises_from_nought_between_its_bounds() {
        HouseholdInterval interval = HouseholdInterval.of(
                List.of(new Seen.GreyAt(63), new Seen.CleanAt(120)), Prior.ofTheTrade(ONE_INCH), ONE_INCH, 0.15);
        List<HouseholdInterval.Point> curve = interval.curve();
        assertEquals(0, curve.getFirst().chanceGrey());
        assertEquals(120, curve.getLast().days(), 1e-9);
        double before = 0;
        for (HouseholdInterval.Point point : curve) {
            assertTrue(point.chanceGrey() >= before);
            assertTrue(point.low() <= point.high());
            before = point.chanceGrey();
        }
        assertThrows(IllegalArgumentException.class, () -> Rhythm.of(interval.posterior(), ONE_INCH, 0));
        assertThrows(IllegalArgumentException.class, () -> Rhythm.of(interval.posterior(), ONE_INCH, 0.6));
    }

    private static Household home(Random random, double scaleDays, double factor) {
        return new Household(
                new Weibull(Household.normal(random, 5, 1.3), Household.normal(random, scaleDays, factor)), random);
    }

    private static Random seeded(String what) {
        long seed = Long.getLong("changeover.seed", System.nanoTime());
        System.out.println(what + " seed=" + seed);
        return new Random(seed);
    }
}
