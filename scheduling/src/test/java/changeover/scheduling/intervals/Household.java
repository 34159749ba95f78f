package changeover.scheduling.intervals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A home whose filters last as they do, looked at by people who know nothing of it. */
record Household(Weibull truth, Random random) {

    /** A life drawn from the truth. */
    double life() {
        return truth.scaleDays() * Math.pow(-Math.log1p(-random.nextDouble()), 1 / truth.shape());
    }

    /** Looked at every so many days and taken out at the latest on the last day, grey or not. */
    Seen looked(double everyDays, double lastDay) {
        double life = life();
        double clean = 0;
        for (double look = everyDays; look <= lastDay; look += everyDays) {
            if (life <= look) {
                return new Seen.GreyBetween(clean, look);
            }
            clean = look;
        }
        return new Seen.CleanAt(clean);
    }

    List<Seen> looked(int filters, double everyDays, double lastDay) {
        List<Seen> seen = new ArrayList<>();
        for (int filter = 0; filter < filters; filter++) {
            seen.add(looked(everyDays, lastDay));
        }
        return seen;
    }

    /** The very day on which each turned grey. */
    List<Seen> watched(int filters) {
        List<Seen> seen = new ArrayList<>();
        for (int filter = 0; filter < filters; filter++) {
            seen.add(new Seen.GreyAt(life()));
        }
        return seen;
    }

    static double normal(Random random, double middle, double factor) {
        return middle * Math.exp(random.nextGaussian() * Math.log(factor));
    }
}
