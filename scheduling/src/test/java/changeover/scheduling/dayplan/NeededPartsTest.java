package changeover.scheduling.dayplan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.catalogue.PartKind;
import changeover.contracts.catalogue.PartSize;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Two thicknesses of one face on the shelf, and cards as their form asks them. */
class NeededPartsTest {

    private static final PartKind FILTER = new PartKind("filter", new Wording("Filter", "Filtre"), "H87", "size");
    private static final List<KnownPart> SHELF = List.of(
            part("THIN", "Filter", "16x25x1"),
            part("DEEP-8", "Filter, MERV 8", "16 x 25 x 4"),
            part("DEEP-11", "Filter, MERV 11", "16x25x4"));

    private static KnownPart part(String code, String name, @Nullable String size) {
        return new KnownPart(code, new Wording(name, name), "H87", "filter", size);
    }

    private static String loaded(Map<String, String> card, List<KnownPart> shelf) {
        var load = new DayPlan.Load(
                "filter",
                FILTER.wording(),
                "H87",
                PartSize.ofMachine(FILTER.fits(), card).map(PartSize::words).orElse(null),
                BigDecimal.ONE,
                true,
                null);
        NeededParts needed = NeededParts.of(List.of(load), shelf);
        return needed.notCarried().isEmpty()
                ? String.join(" ", needed.quantities().keySet())
                : "not carried";
    }

    @Test
    void the_filter_of_the_card_is_loaded_and_no_other_thickness_or_class() {
        assertEquals("DEEP-11", loaded(Map.of("size", "16x25", "thickness", "4", "merv", "11"), SHELF));
        assertEquals("DEEP-8", loaded(Map.of("size", "16 × 25", "thickness", "4", "merv", "8"), SHELF));
        assertEquals("THIN", loaded(Map.of("size", "16x25", "thickness", "1", "merv", "8"), SHELF));
        assertEquals("THIN", loaded(Map.of("size", "16 x 25 x 1"), SHELF));
        assertEquals("not carried", loaded(Map.of("size", "16x25", "thickness", "4", "merv", "13"), SHELF));
        assertEquals("not carried", loaded(Map.of("size", "16x25"), SHELF));
        assertEquals("not carried", loaded(Map.of(), SHELF));
    }

    @Test
    void one_that_any_will_do_for_comes_last() {
        List<KnownPart> shelf = Stream.concat(Stream.of(part("ANY", "Any filter", null)), SHELF.stream())
                .toList();
        assertEquals("THIN", loaded(Map.of("size", "16x25", "thickness", "1"), shelf));
        assertEquals("ANY", loaded(Map.of("size", "20x20", "thickness", "1"), shelf));
        assertEquals("ANY", loaded(Map.of(), shelf));
    }

    @Test
    void a_part_goes_into_the_machine_whose_card_asks_for_it() {
        Map<String, String> card = Map.of("size", "16x25", "thickness", "4", "direction", "up");
        assertTrue(SHELF.get(1).goesInto(card));
        assertFalse(SHELF.get(0).goesInto(card));
        assertTrue(part("ANY", "Any", null).goesInto(card));
    }
}
