package changeover.scheduling.returns;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Free returns are counted by their cause first, then by part and by kind of machine, the most frequent first; by technician they stand
 * by name, so that nobody is ranked.
 */
public record ReturnCounts(
        int returns, int minutes, List<Line> causes, List<Line> parts, List<Line> kinds, List<Line> technicians) {

    /** @param minutes on site at these returns */
    public record Line(String of, int returns, int minutes) {}

    /**
     * @param part the name of a part as its reader reads it; what answers null is counted nowhere
     * @param kind likewise the name of a kind of machine
     */
    public static ReturnCounts of(
            List<ReturnVisit> kept,
            Function<ReturnVisit, String> cause,
            Function<ReturnVisit, @Nullable String> part,
            Function<ReturnVisit, @Nullable String> kind) {
        Comparator<Line> most = Comparator.comparing(Line::returns).reversed().thenComparing(Line::of);
        return new ReturnCounts(
                kept.size(),
                kept.stream().mapToInt(ReturnVisit::minutes).sum(),
                lines(kept, cause, most),
                lines(kept, part, most),
                lines(kept, kind, most),
                lines(
                        kept,
                        one -> one.technician().isEmpty() ? null : one.technician(),
                        Comparator.comparing(Line::of)));
    }

    private static List<Line> lines(
            List<ReturnVisit> kept, Function<ReturnVisit, @Nullable String> by, Comparator<Line> order) {
        Map<String, List<ReturnVisit>> groups = kept.stream()
                .filter(one -> by.apply(one) != null)
                .collect(Collectors.groupingBy(
                        one -> Objects.requireNonNull(by.apply(one)), TreeMap::new, Collectors.toList()));
        return groups.entrySet().stream()
                .map(group -> new Line(
                        group.getKey(),
                        group.getValue().size(),
                        group.getValue().stream().mapToInt(ReturnVisit::minutes).sum()))
                .sorted(order)
                .toList();
    }
}
