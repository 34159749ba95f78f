package changeover.scheduling.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What goes from the shelf into the vans, and what is bought. */
class LoadingTest {

    private static final UUID FIRST = new UUID(0, 1);
    private static final UUID SECOND = new UUID(0, 2);

    @Test
    void visits_of_all_vans_come_before_minimums_and_the_shelf_gives_nothing_twice() {
        Loading loading = Loading.of(
                List.of(van(FIRST, "a=2", "a=3", "a=1"), van(SECOND, "a=4", "", "")), parts("a=6"), parts("a=5"));
        assertEquals("a 2+3-1: 2, lacking 2", said(loading, FIRST));
        assertEquals("a 4+0-0: 4, lacking 0", said(loading, SECOND));
        assertEquals("a 2 and 5", bought(loading));
    }

    @Test
    void a_van_that_holds_enough_is_not_loaded_and_nothing_is_bought() {
        Loading loading = Loading.of(List.of(van(FIRST, "a=1", "a=1", "a=2")), parts("a=4"), parts("a=4"));
        assertEquals("a 1+1-2: 0, lacking 0", said(loading, FIRST));
        assertTrue(loading.vans().getFirst().toLoad().isEmpty());
        assertEquals("", bought(loading));
    }

    @Test
    void what_lies_below_nought_gives_nothing() {
        Loading loading = Loading.of(List.of(van(FIRST, "a=1", "", "a=-3")), parts("a=-1"), Map.of());
        assertEquals("a 1+0-0: 0, lacking 1", said(loading, FIRST));
        assertEquals("a 1 and 0", bought(loading));
    }

    /** Whatever the numbers: what is loaded and lacking is what was missing, and the shelf never gives more than it has. */
    @Test
    void nothing_is_made_and_nothing_is_lost() {
        var random = new Random(20_261_130);
        for (int trial = 0; trial < 20_000; trial++) {
            List<Loading.Asked> vans = new ArrayList<>();
            for (int at = 0; at < 1 + random.nextInt(4); at++) {
                vans.add(new Loading.Asked(new UUID(0, at), some(random), some(random), some(random)));
            }
            Map<String, BigDecimal> shelf = some(random);
            Loading loading = Loading.of(vans, shelf, some(random));
            Map<String, BigDecimal> given = new TreeMap<>();
            for (Loading.Van van : loading.vans()) {
                for (Loading.Line line : van.lines()) {
                    BigDecimal missing = line.needed()
                            .add(line.least())
                            .subtract(line.held())
                            .max(BigDecimal.ZERO);
                    assertEquals(0, missing.compareTo(line.load().add(line.lacking())), "trial " + trial);
                    given.merge(line.partCode(), line.load(), BigDecimal::add);
                }
            }
            int seen = trial;
            given.forEach((part, quantity) ->
                    assertTrue(quantity.compareTo(shelf.getOrDefault(part, BigDecimal.ZERO)) <= 0, "trial " + seen));
        }
    }

    private static Map<String, BigDecimal> some(Random random) {
        Map<String, BigDecimal> some = new TreeMap<>();
        for (String part : List.of("a", "b", "c")) {
            if (random.nextBoolean()) {
                some.put(part, BigDecimal.valueOf(random.nextInt(40), 1));
            }
        }
        return some;
    }

    private static Loading.Asked van(UUID place, String needs, String least, String holds) {
        return new Loading.Asked(place, parts(needs), parts(least), parts(holds));
    }

    private static Map<String, BigDecimal> parts(String text) {
        Map<String, BigDecimal> parts = new TreeMap<>();
        for (String one : text.isEmpty() ? new String[0] : text.split(" ")) {
            parts.put(one.split("=")[0], new BigDecimal(one.split("=")[1]));
        }
        return parts;
    }

    private static String said(Loading loading, UUID place) {
        return loading.vans().stream()
                .filter(van -> van.place().equals(place))
                .flatMap(van -> van.lines().stream())
                .map(line -> line.partCode() + " " + line.needed() + "+" + line.least() + "-" + line.held() + ": "
                        + line.load() + ", lacking " + line.lacking())
                .collect(Collectors.joining("; "));
    }

    private static String bought(Loading loading) {
        return loading.buy().stream()
                .map(one -> one.partCode() + " " + one.forVans() + " and " + one.forShelf())
                .collect(Collectors.joining("; "));
    }
}
