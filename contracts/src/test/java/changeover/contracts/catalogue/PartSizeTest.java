package changeover.contracts.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;

class PartSizeTest {

    private static void check(String said, String words) {
        assertEquals(words, PartSize.of(said).words(), said);
    }

    private static void card(Map<String, String> fits, String words) {
        assertEquals(
                words, PartSize.ofMachine("size", fits).map(PartSize::words).orElse("-"), fits.toString());
    }

    @Test
    void a_size_is_the_same_however_it_is_written() {
        for (String said : new String[] {
            "16x25x1",
            "16 x 25 x 1",
            "16X25X1",
            "16 × 25 × 1",
            "25x16x1",
            "16\"x25\"x1\"",
            "16 in. x 25 in. x 1 in.",
            "16 po × 25 po × 1 po",
            "16 by 25 by 1",
            "16 par 25 par 1",
            "16.0x25x1,0",
            " 16*25*1 "
        }) {
            check(said, "16x25x1");
        }
        check("16x25x4, MERV 11", "16x25x4 MERV 11");
        check("15,5 x 24.25 x 1", "15.5x24.25x1");
        check("100x20x1", "20x100x1");
        check("A35", "A35");
        check("pad  no. 35", "pad no. 35");
    }

    @Test
    void a_card_says_face_and_thickness_apart_as_its_form_asks() {
        card(Map.of("size", "16x25", "thickness", "4"), "16x25x4");
        card(Map.of("size", "16 x 25", "thickness", "4 in."), "16x25x4");
        card(Map.of("size", "16x25x4", "thickness", "1"), "16x25x4");
        card(Map.of("size", "16x25", "thickness", "4", "merv", "11"), "16x25x4 MERV 11");
        card(Map.of("size", "16x25"), "16x25");
        card(Map.of("thickness", "4"), "-");
        card(Map.of("size", "A35", "thickness", "2"), "A35");
    }

    @Test
    void two_thicknesses_and_two_classes_are_two_filters() {
        PartSize wanted = PartSize.of("16x25x4 MERV 11");
        assertTrue(PartSize.of("16 x 25 x 4").fits(wanted));
        assertTrue(PartSize.ofPart("16x25x4", "Filter, MERV 11").fits(wanted));
        assertTrue(PartSize.ofPart("16x25x4", "Filter, MERV 8").fits(PartSize.of("16x25x4")));
        assertFalse(PartSize.ofPart("16x25x4", "Filter, MERV 8").fits(wanted));
        assertFalse(PartSize.of("16x25x1").fits(wanted));
        assertFalse(PartSize.of("16x25").fits(wanted));
        assertFalse(PartSize.of("16x25x1").fits(PartSize.of("16x25")), "whose thickness nobody read");
        assertTrue(PartSize.of("a35").fits(PartSize.of("A35")));
    }
}
