package changeover.contracts.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** Cards of a filter's slot, a rooftop unit and an exchanger, and what is brought to each. */
class PartFactsTest {

    private static final Catalogue CATALOGUE = Catalogue.shipped();

    private static void check(String part, Map<String, String> card, String expected) {
        String size = CATALOGUE
                .sizeOf(CATALOGUE.findPart(part).orElseThrow(), card)
                .map(PartSize::words)
                .orElse("-");
        assertEquals(expected, CATALOGUE.countOf(part, card) + " " + size, card.toString());
    }

    @Test
    void a_part_is_known_by_the_name_that_the_kind_of_machine_has_for_it() {
        check("filter", Map.of("size", "16 x 25", "thickness", "4"), "1 16x25x4");
        check("filter", Map.of("filters", "20 × 20 × 2"), "1 20x20x2");
        check("filter", Map.of("filters", "20x20x2, MERV 8", "filter-count", "4"), "4 20x20x2 MERV 8");
        check("filter", Map.of("filter-count", "4"), "4 -");
        check("filter", Map.of("pad", "35"), "1 -");
        check("exchanger-filter", Map.of("filters", "EX-12"), "1 EX-12");
        check("exchanger-filter", Map.of("filters", "EX-12", "filter-count", "4"), "1 EX-12");
        check("float-switch", Map.of("size", "16x25x1"), "1 -");
    }

    @Test
    void what_is_no_count_counts_one() {
        for (String said : new String[] {"0", "-2", "2.5", "100", "four", ""}) {
            check("filter", Map.of("filters", "20x20x2", "filter-count", said), "1 20x20x2");
        }
    }
}
