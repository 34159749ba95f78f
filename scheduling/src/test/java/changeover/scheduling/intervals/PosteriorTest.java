package changeover.scheduling.intervals;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PosteriorTest {

    private static final Limits ONE_INCH = Limits.ofThickness(1);
    private static final Prior.Weak WEAK = Prior.ofTheTrade(ONE_INCH);

    @Test
    void the_likeliest_life_is_the_one_that_solves_the_equations_of_maximum_likelihood() {
        Random random = seeded("likelihood");
        for (int round = 0; round < 60; round++) {
            Household home =
                    new Household(new Weibull(0.7 + 5 * random.nextDouble(), 5 + 200 * random.nextDouble()), random);
            int filters = 3 + random.nextInt(round < 3 ? 400 : 40);
            double end = home.truth().scaleDays() * (0.8 + random.nextDouble());
            List<Double> grey = new ArrayList<>();
            List<Double> clean = new ArrayList<>();
            List<Seen> seen = new ArrayList<>();
            for (int filter = 0; filter < filters; filter++) {
                double life = home.life();
                (life <= end ? grey : clean).add(Math.min(life, end));
                seen.add(life <= end ? new Seen.GreyAt(life) : new Seen.CleanAt(end));
            }
            if (grey.size() < 3) {
                continue;
            }
            Weibull solved = solved(grey, clean);
            if (solved.shape() > Prior.LARGEST_SHAPE / 1.01) {
                continue;
            }
            Weibull found = Posterior.of(seen, Prior.FLAT).mode();
            assertEquals(solved.shape(), found.shape(), 1e-6 * solved.shape());
            assertEquals(solved.scaleDays(), found.scaleDays(), 1e-6 * solved.scaleDays());
        }
    }

    /** The profile equation of the shape, halved to its root; another way than the product's. */
    private static Weibull solved(List<Double> grey, List<Double> clean) {
        List<Double> all = new ArrayList<>(grey);
        all.addAll(clean);
        double longest = Collections.max(all);
        double mean = grey.stream().mapToDouble(Math::log).average().orElseThrow();
        double low = 1e-3;
        double high = 1e3;
        for (int step = 0; step < 200; step++) {
            double shape = (low + high) / 2;
            double sum = 0;
            double weighed = 0;
            for (double time : all) {
                double power = Math.pow(time / longest, shape);
                sum += power;
                weighed += power * Math.log(time);
            }
            if (weighed / sum - 1 / shape - mean > 0) {
                high = shape;
            } else {
                low = shape;
            }
        }
        double shape = (low + high) / 2;
        double sum = all.stream()
                .mapToDouble(time -> Math.pow(time / longest, shape))
                .sum();
        return new Weibull(shape, longest * Math.pow(sum / grey.size(), 1 / shape));
    }

    @Test
    void many_looks_find_the_truth_even_when_nobody_saw_the_day() {
        Random random = seeded("truth");
        for (int round = 0; round < 20; round++) {
            Weibull truth = new Weibull(2 + 3 * random.nextDouble(), 50 + 60 * random.nextDouble());
            List<Seen> seen = new Household(truth, random).looked(400, 30, 150);
            Weibull found = Posterior.of(seen, Prior.FLAT).mode();
            assertEquals(truth.scaleDays(), found.scaleDays(), 0.12 * truth.scaleDays());
            assertEquals(truth.shape(), found.shape(), 0.3 * truth.shape());
        }
    }

    @Test
    void more_sights_narrow_what_is_believed() {
        Random random = seeded("narrower");
        for (int round = 0; round < 25; round++) {
            Household home = new Household(new Weibull(4, 40 + 60 * random.nextDouble()), random);
            List<Seen> some = home.watched(3);
            List<Seen> more = new ArrayList<>(some);
            more.addAll(home.watched(27));
            double before = width(Posterior.of(some, WEAK));
            double after = width(Posterior.of(more, WEAK));
            assertTrue(after < before, after + " after 30, " + before + " after 3");
            assertTrue(before < width(Posterior.of(List.of(), WEAK)));
        }
    }

    private static double width(Posterior posterior) {
        return posterior.scaleDays(0.9) / posterior.scaleDays(0.1);
    }

    @Test
    void a_filter_seen_clean_for_longer_never_shortens_the_life() {
        Random random = seeded("clean for longer");
        for (int round = 0; round < 40; round++) {
            Household home = new Household(new Weibull(3, 60), random);
            List<Seen> known = home.looked(random.nextInt(5), 30, 120);
            double before = 0;
            for (double clean = 10; clean <= 150; clean += 20) {
                List<Seen> seen = new ArrayList<>(known);
                seen.add(new Seen.CleanAt(clean));
                double scale = Posterior.of(seen, WEAK).mode().scaleDays();
                assertTrue(scale >= before - 1e-6, "clean at " + clean + ": " + scale + " after " + before);
                before = scale;
            }
            List<Seen> turned = new ArrayList<>(known);
            turned.add(new Seen.GreyAt(50));
            List<Seen> stayed = new ArrayList<>(known);
            stayed.add(new Seen.CleanAt(50));
            assertTrue(Posterior.of(stayed, WEAK).mode().scaleDays()
                    >= Posterior.of(turned, WEAK).mode().scaleDays());
            for (double days = 60; days <= 120; days += 10) {
                assertTrue(Posterior.of(stayed, WEAK).greyBy(days)
                        <= Posterior.of(turned, WEAK).greyBy(days) + 1e-9);
            }
        }
    }

    @Test
    void the_order_of_the_sights_changes_nothing() {
        Random random = seeded("order");
        List<Seen> seen = new ArrayList<>(new Household(new Weibull(3, 60), random).looked(12, 30, 120));
        Weibull one = Posterior.of(seen, WEAK).mode();
        Collections.reverse(seen);
        Weibull other = Posterior.of(seen, WEAK).mode();
        assertEquals(one.shape(), other.shape(), 1e-6);
        assertEquals(one.scaleDays(), other.scaleDays(), 1e-4);
    }

    @Test
    void odd_sights_give_a_finite_life() {
        List<Seen> identical = Collections.nCopies(200, new Seen.GreyAt(63));
        List<List<Seen>> odd = List.of(
                List.of(new Seen.GreyAt(63)),
                List.of(new Seen.CleanAt(63)),
                List.of(new Seen.GreyBetween(0, 30)),
                List.of(new Seen.GreyBetween(62.999999, 63)),
                Collections.nCopies(500, new Seen.CleanAt(90)),
                Collections.nCopies(50, new Seen.GreyBetween(0, 10)),
                identical,
                List.of(new Seen.GreyAt(Seen.SHORTEST_DAYS), new Seen.GreyAt(Seen.LONGEST_DAYS)),
                List.of(new Seen.CleanAt(Seen.LONGEST_DAYS), new Seen.GreyAt(Seen.SHORTEST_DAYS)));
        for (List<Seen> seen : odd) {
            for (Prior prior : List.of(Prior.FLAT, WEAK)) {
                Posterior posterior = Posterior.of(seen, prior);
                Weibull mode = posterior.mode();
                assertTrue(mode.shape() >= Prior.LEAST_SHAPE - 1e-9 && mode.shape() <= Prior.LARGEST_SHAPE + 1e-9);
                assertTrue(Double.isFinite(mode.scaleDays()) && mode.scaleDays() > 0);
                double before = 0;
                for (double days = 0; days < 400; days += 7) {
                    double chance = posterior.greyBy(days);
                    assertTrue(chance >= before - 1e-12 && chance <= 1 + 1e-9, seen + ": " + chance);
                    before = chance;
                }
                Rhythm rhythm = Rhythm.of(posterior, ONE_INCH, 0.15);
                assertTrue(rhythm.checkAfterDays() >= 31 && rhythm.checkAfterDays() <= rhythm.changeAfterDays());
                assertTrue(rhythm.changeAfterDays() <= 91);
            }
        }
        assertEquals(63, Posterior.of(identical, Prior.FLAT).mode().scaleDays(), 0.5);
        assertTrue(Posterior.of(identical, Prior.FLAT).atTheEdge());
    }

    @Test
    void what_nobody_can_have_seen_is_refused() {
        for (double days : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY, 40_000}) {
            assertThrows(IllegalArgumentException.class, () -> new Seen.GreyAt(days));
            assertThrows(IllegalArgumentException.class, () -> new Seen.CleanAt(days));
            assertThrows(IllegalArgumentException.class, () -> new Seen.GreyBetween(0, days));
        }
        assertThrows(IllegalArgumentException.class, () -> new Seen.GreyBetween(30, 30));
        assertThrows(IllegalArgumentException.class, () -> Posterior.of(List.of(), Prior.FLAT));
        assertThrows(IllegalArgumentException.class, () -> new Prior.Weak(90, 1, 5, 1.5));
    }

    private static Random seeded(String what) {
        long seed = Long.getLong("changeover.seed", System.nanoTime());
        System.out.println(what + " seed=" + seed);
        return new Random(seed);
    }
}
