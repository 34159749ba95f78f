package changeover.scheduling.reviews;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What somebody measures, or needs of time, beside the middle of what all the others do: a question to ask, and no judgement. People stand
 * by the alphabet, and fewer than {@link #FEWEST} of one's own or of the others' say nothing.
 */
public record Spread(String of, String unit, List<Line> lines) {

    public static final int FEWEST = 5;

    /**
     * Something that one person measured.
     *
     * @param of what was measured, on what kind of machine
     * @param unit code of the unit; all of one {@code of} in one unit stand together
     */
    public record Sample(String of, String unit, String person, BigDecimal value) {}

    /**
     * @param own the middle of one's own; null where these are too few
     * @param others the middle of all others'; null where these are too few
     */
    public record Line(
            String person,
            int count,
            @Nullable BigDecimal own,
            int otherCount,
            @Nullable BigDecimal others) {}

    public Spread {
        lines = List.copyOf(lines);
    }

    /** One spread for each thing measured, by its name; what only one person measured is left out. */
    public static List<Spread> of(List<Sample> samples) {
        record Thing(String of, String unit) {}
        Map<Thing, List<Sample>> things = samples.stream()
                .collect(Collectors.groupingBy(
                        sample -> new Thing(sample.of(), sample.unit()),
                        () -> new TreeMap<>(Comparator.comparing(Thing::of).thenComparing(Thing::unit)),
                        Collectors.toList()));
        List<Spread> spreads = new ArrayList<>();
        things.forEach((thing, all) -> {
            List<Line> lines = lines(all);
            if (lines.stream().anyMatch(line -> line.own() != null && line.others() != null)) {
                spreads.add(new Spread(thing.of(), thing.unit(), lines));
            }
        });
        return spreads;
    }

    private static List<Line> lines(List<Sample> all) {
        Map<String, List<BigDecimal>> byPerson = all.stream()
                .collect(Collectors.groupingBy(
                        Sample::person, TreeMap::new, Collectors.mapping(Sample::value, Collectors.toList())));
        List<Line> lines = new ArrayList<>();
        byPerson.forEach((person, own) -> {
            List<BigDecimal> others = all.stream()
                    .filter(sample -> !sample.person().equals(person))
                    .map(Sample::value)
                    .toList();
            lines.add(new Line(person, own.size(), middle(own), others.size(), middle(others)));
        });
        return lines;
    }

    /** The middle one, or half way between the two in the middle; null where there are too few. */
    static @Nullable BigDecimal middle(List<BigDecimal> values) {
        if (values.size() < FEWEST) {
            return null;
        }
        List<BigDecimal> sorted = new ArrayList<>(values);
        Collections.sort(sorted);
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1
                ? sorted.get(half)
                : sorted.get(half - 1).add(sorted.get(half)).divide(BigDecimal.TWO, 6, RoundingMode.HALF_UP);
    }
}
