package changeover.scheduling.stock;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;

/**
 * What goes from the shelf into each van before it leaves, and what must be bought. A van should hold what its visits need and
 * keep its minimum beside it; the shelf gives to the vans in their order as far as it reaches, visits before minimums; what
 * neither has is bought, and so is what the shelf lacks of its own minimum afterwards.
 */
public record Loading(List<Van> vans, List<Buy> buy) {

    /**
     * A van before it is loaded.
     *
     * @param needs what its visits use up, by part
     * @param least what it should hold when they are done, by part
     * @param holds what lies in it, by part
     */
    public record Asked(
            UUID place, Map<String, BigDecimal> needs, Map<String, BigDecimal> least, Map<String, BigDecimal> holds) {}

    /** @param lines the parts that its visits or its minimum ask for */
    public record Van(UUID place, List<Line> lines) {

        public Van {
            lines = List.copyOf(lines);
        }

        /** What is moved from the shelf. */
        public List<Line> toLoad() {
            return lines.stream().filter(line -> line.load().signum() > 0).toList();
        }
    }

    /**
     * @param load to move from the shelf
     * @param lacking what the shelf does not have
     */
    public record Line(
            String partCode,
            BigDecimal needed,
            BigDecimal least,
            BigDecimal held,
            BigDecimal load,
            BigDecimal lacking) {}

    /**
     * @param forVans what the vans lack
     * @param forShelf what the shelf lacks of its minimum once the vans are loaded
     */
    public record Buy(String partCode, BigDecimal forVans, BigDecimal forShelf) {

        public BigDecimal quantity() {
            return forVans.add(forShelf);
        }
    }

    public Loading {
        vans = List.copyOf(vans);
        buy = List.copyOf(buy);
    }

    public static Loading of(List<Asked> vans, Map<String, BigDecimal> shelf, Map<String, BigDecimal> shelfLeast) {
        Map<String, BigDecimal> left = new TreeMap<>();
        shelf.forEach((part, quantity) -> left.put(part, quantity.max(BigDecimal.ZERO)));
        List<Map<String, BigDecimal>> forVisits = new ArrayList<>();
        for (Asked van : vans) {
            forVisits.add(given(van, van.needs(), Map.of(), left));
        }
        List<Van> loaded = new ArrayList<>();
        Map<String, BigDecimal> lacking = new TreeMap<>();
        for (int at = 0; at < vans.size(); at++) {
            Asked van = vans.get(at);
            Map<String, BigDecimal> first = forVisits.get(at);
            Map<String, BigDecimal> more = given(van, whole(van), first, left);
            loaded.add(van(van, first, more, lacking));
        }
        return new Loading(loaded, buy(lacking, left, shelfLeast));
    }

    /** What the shelf gives so that the van holds what it should, beside what it was given before. */
    private static Map<String, BigDecimal> given(
            Asked van, Map<String, BigDecimal> should, Map<String, BigDecimal> before, Map<String, BigDecimal> left) {
        Map<String, BigDecimal> given = new TreeMap<>();
        should.forEach((part, quantity) -> {
            BigDecimal there = of(van.holds(), part).add(of(before, part));
            BigDecimal more = quantity.subtract(there).max(BigDecimal.ZERO).min(of(left, part));
            if (more.signum() > 0) {
                given.put(part, more);
                left.merge(part, more.negate(), BigDecimal::add);
            }
        });
        return given;
    }

    private static Map<String, BigDecimal> whole(Asked van) {
        Map<String, BigDecimal> whole = new TreeMap<>(van.needs());
        van.least().forEach((part, quantity) -> whole.merge(part, quantity, BigDecimal::add));
        return whole;
    }

    private static Van van(
            Asked van, Map<String, BigDecimal> first, Map<String, BigDecimal> more, Map<String, BigDecimal> lacking) {
        List<Line> lines = new ArrayList<>();
        whole(van).forEach((part, should) -> {
            BigDecimal held = of(van.holds(), part);
            BigDecimal load = of(first, part).add(of(more, part));
            BigDecimal missing = should.subtract(held).subtract(load).max(BigDecimal.ZERO);
            lines.add(new Line(part, of(van.needs(), part), of(van.least(), part), held, load, missing));
            lacking.merge(part, missing, BigDecimal::add);
        });
        return new Van(van.place(), lines);
    }

    private static List<Buy> buy(
            Map<String, BigDecimal> lacking, Map<String, BigDecimal> left, Map<String, BigDecimal> shelfLeast) {
        var parts = new TreeSet<>(lacking.keySet());
        parts.addAll(shelfLeast.keySet());
        return parts.stream()
                .map(part -> new Buy(
                        part,
                        of(lacking, part),
                        of(shelfLeast, part).subtract(of(left, part)).max(BigDecimal.ZERO)))
                .filter(one -> one.quantity().signum() > 0)
                .toList();
    }

    /** What went below nought by a named reason is not there to be taken. */
    private static BigDecimal of(Map<String, BigDecimal> quantities, String part) {
        return quantities.getOrDefault(part, BigDecimal.ZERO).max(BigDecimal.ZERO);
    }
}
