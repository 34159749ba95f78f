package changeover.scheduling.intervals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How likely each life is after what was seen: a grid over the logarithms of scale and shape, drawn again ever closer
 * around where the likely lives lie. The same sights in any order give the same grid to rounding.
 */
public final class Posterior {

    private static final int CELLS = 61;
    private static final double UNLIKELY = 20;
    private static final int CLOSER = 4;

    private final Box whole;
    private final Box box;
    private final List<Sight> sights;
    private final Prior prior;
    private final Weibull[] lives;
    private final double[] weights;
    private final Weibull mode;

    private Posterior(Box whole, Box box, double[][] logs, List<Sight> sights, Prior prior) {
        this.whole = whole;
        this.box = box;
        this.sights = sights;
        this.prior = prior;
        double best = highest(logs);
        int[] likely = IntStream.range(0, CELLS * CELLS)
                .filter(cell -> logs[cell / CELLS][cell % CELLS] > best - UNLIKELY)
                .toArray();
        lives = Arrays.stream(likely)
                .mapToObj(cell ->
                        new Weibull(Math.exp(box.shape(cell % CELLS, CELLS)), Math.exp(box.scale(cell / CELLS, CELLS))))
                .toArray(Weibull[]::new);
        double[] heights = Arrays.stream(likely)
                .mapToDouble(cell -> Math.exp(logs[cell / CELLS][cell % CELLS] - best))
                .toArray();
        double sum = Arrays.stream(heights).sum();
        weights = Arrays.stream(heights).map(height -> height / sum).toArray();
        mode = climbed(likely[highest(heights)]);
    }

    /** @throws IllegalArgumentException for a flat prior with nothing seen */
    public static Posterior of(List<Seen> seen, Prior prior) {
        List<Sight> all = Sight.of(seen);
        Box whole = prior.box(seen);
        Box box = whole;
        double[][] logs = logs(box, all, prior);
        for (int round = 0; round < CLOSER; round++) {
            Box closer = closer(box, logs);
            if (closer.area() > 0.8 * box.area()) {
                break;
            }
            box = closer;
            logs = logs(box, all, prior);
        }
        return new Posterior(whole, box, logs, all, prior);
    }

    /** The likeliest life, to a millionth; {@link #atTheEdge()} says when it lies where nobody looked further. */
    public Weibull mode() {
        return mode;
    }

    private Weibull climbed(int cell) {
        double[] summit = new Summit(whole, this::logPosterior)
                .from(
                        box.scale(cell / CELLS, CELLS),
                        box.shape(cell % CELLS, CELLS),
                        Math.max(box.scale(1, CELLS) - box.scale(0, CELLS), 1e-3));
        return new Weibull(Math.exp(summit[1]), Math.exp(summit[0]));
    }

    private static int highest(double[] heights) {
        return IntStream.range(0, heights.length)
                .boxed()
                .max(Comparator.comparingDouble(index -> heights[index]))
                .orElseThrow();
    }

    /** Whether the likeliest life lies on the rim of what is looked at: then the sights alone say only "so much or more". */
    public boolean atTheEdge() {
        double scale = Math.log(mode.scaleDays());
        double shape = Math.log(mode.shape());
        return Math.min(scale - whole.lowScale(), whole.highScale() - scale) < 1e-5
                || Math.min(shape - whole.lowShape(), whole.highShape() - shape) < 1e-5;
    }

    /** The chance that the next filter is grey after that many days, all lives weighed. */
    public double greyBy(double days) {
        return IntStream.range(0, lives.length)
                .mapToDouble(index -> weights[index] * lives[index].greyBy(days))
                .sum();
    }

    /** So many lives, each as likely as the others: to play what may come. */
    public List<Weibull> likely(int count) {
        List<Weibull> drawn = new ArrayList<>();
        double below = 0;
        for (int index = 0; index < lives.length && drawn.size() < count; index++) {
            below += weights[index];
            while (drawn.size() < count && (drawn.size() + 0.5) / count <= below) {
                drawn.add(lives[index]);
            }
        }
        while (drawn.size() < count) {
            drawn.add(lives[lives.length - 1]);
        }
        return List.copyOf(drawn);
    }

    /** The mean of the logarithm of the characteristic life, and of the shape. */
    Spread logScale() {
        return Spread.of(
                Arrays.stream(lives)
                        .mapToDouble(life -> Math.log(life.scaleDays()))
                        .toArray(),
                weights);
    }

    Spread logShape() {
        return Spread.of(
                Arrays.stream(lives).mapToDouble(life -> Math.log(life.shape())).toArray(), weights);
    }

    /** The chance of being grey by then which so many of 100 of the likely lives stay below. */
    public double greyBy(double days, double share) {
        return quantile(
                Arrays.stream(lives).mapToDouble(life -> life.greyBy(days)).toArray(), share);
    }

    /** The characteristic life which that share of the likely lives stays below. */
    public double scaleDays(double share) {
        return quantile(Arrays.stream(lives).mapToDouble(Weibull::scaleDays).toArray(), share);
    }

    public double shape(double share) {
        return quantile(Arrays.stream(lives).mapToDouble(Weibull::shape).toArray(), share);
    }

    private double quantile(double[] values, double share) {
        int[] order = IntStream.range(0, values.length)
                .boxed()
                .sorted(Comparator.comparingDouble(index -> values[index]))
                .mapToInt(Integer::intValue)
                .toArray();
        double below = 0;
        for (int index : order) {
            below += weights[index];
            if (below >= share) {
                return values[index];
            }
        }
        return values[order[order.length - 1]];
    }

    private double logPosterior(double logScale, double logShape) {
        return logPosterior(sights, prior, logScale, logShape);
    }

    private static double logPosterior(List<Sight> sights, Prior prior, double logScale, double logShape) {
        double sum = prior.logDensity(logScale, logShape);
        for (Sight one : sights) {
            sum += one.logLikelihood(logScale, logShape);
        }
        return sum;
    }

    private static double[][] logs(Box box, List<Sight> sights, Prior prior) {
        double[][] logs = new double[CELLS][CELLS];
        for (int scale = 0; scale < CELLS; scale++) {
            for (int shape = 0; shape < CELLS; shape++) {
                logs[scale][shape] = logPosterior(sights, prior, box.scale(scale, CELLS), box.shape(shape, CELLS));
            }
        }
        return logs;
    }

    private static Box closer(Box box, double[][] logs) {
        double best = highest(logs);
        int[] likely = IntStream.range(0, CELLS * CELLS)
                .filter(cell -> logs[cell / CELLS][cell % CELLS] > best - UNLIKELY)
                .toArray();
        return box.around(
                Arrays.stream(likely).map(cell -> cell / CELLS).min().orElse(0),
                Arrays.stream(likely).map(cell -> cell / CELLS).max().orElse(CELLS - 1),
                Arrays.stream(likely).map(cell -> cell % CELLS).min().orElse(0),
                Arrays.stream(likely).map(cell -> cell % CELLS).max().orElse(CELLS - 1),
                CELLS);
    }

    private static double highest(double[][] logs) {
        return Arrays.stream(logs).flatMapToDouble(Arrays::stream).max().orElseThrow();
    }
}
