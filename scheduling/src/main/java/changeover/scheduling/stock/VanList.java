package changeover.scheduling.stock;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a technician loads in the morning: what the day's visits need, less what the van holds, as far as the shelf has it;
 * the rest is to be bought.
 */
public record VanList(List<Line> lines) {

    /** @param load to move from the shelf to the van; {@code buy} is what neither has */
    public record Line(String partCode, BigDecimal needed, BigDecimal inVan, BigDecimal load, BigDecimal buy) {}

    public VanList {
        lines = List.copyOf(lines);
    }

    public static VanList of(
            Map<String, BigDecimal> needed, Map<String, BigDecimal> inVan, Map<String, BigDecimal> onShelf) {
        List<Line> lines = new ArrayList<>();
        new TreeMap<>(needed).forEach((part, need) -> {
            BigDecimal held = held(inVan, part);
            BigDecimal missing = need.subtract(held).max(BigDecimal.ZERO);
            BigDecimal load = missing.min(held(onShelf, part));
            lines.add(new Line(part, need, held, load, missing.subtract(load)));
        });
        return new VanList(lines);
    }

    public List<Line> toLoad() {
        return lines.stream().filter(line -> line.load().signum() > 0).toList();
    }

    public List<Line> toBuy() {
        return lines.stream().filter(line -> line.buy().signum() > 0).toList();
    }

    /** What went below nought by a named reason is not there to be taken. */
    private static BigDecimal held(Map<String, BigDecimal> there, String part) {
        return there.getOrDefault(part, BigDecimal.ZERO).max(BigDecimal.ZERO);
    }
}
