package changeover.billing.documents.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.documents.band.ScaleGeometry.Tick;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A reading and its band always fit their scale, whose figures are round. */
class ScaleGeometryTest {

    @Test
    void theScaleHoldsBandAndReadingOnRoundFigures() {
        check("0 5 10 15 20 25 30", true, "18.8", "22.9", "12.1");
        check("12 14 16 18 20 22 24", false, "16", "22", "18");
        check("0 10 20 30 40 50 60 70", false, null, "60", "21");
        check("0.0 0.1 0.2 0.3 0.4 0.5 0.6 0.7", true, null, "0.50", "0.61");
        check("-20 -15 -10 -5 0", false, "-15", "-5", null);
    }

    private static void check(
            String figures, boolean outside, @Nullable String low, @Nullable String high, @Nullable String reading) {
        ScaleGeometry scale = ScaleGeometry.of(number(low), number(high), number(reading));
        List<String> shown = scale.ticks().stream()
                .map(Tick::figure)
                .filter(Objects::nonNull)
                .map(BigDecimal::toPlainString)
                .toList();
        assertEquals(figures, String.join(" ", shown));
        assertEquals(outside, scale.outside());
        assertTrue(scale.bandFrom() >= 0 && scale.bandFrom() < scale.bandUntil() && scale.bandUntil() <= 1);
        if (reading != null) {
            Double at = scale.reading();
            assertNotNull(at);
            assertTrue(at >= 0 && at <= 1, "the triangle stands on the scale");
        }
    }

    private static @Nullable BigDecimal number(@Nullable String figure) {
        return figure == null ? null : new BigDecimal(figure);
    }
}
