package changeover.contracts.catalogue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A reading is judged in its own unit against its band and its limit; where a figure that the band needs is missing it is
 * kept, not judged.
 */
public final class ReadingRule {

    /**
     * @param standing against the band
     * @param expected the band's figures; null when there are none
     * @param actOn whether what to do past it applies: past the limit, or outside the band where there is no limit
     */
    public record Judgement(Standing standing, @Nullable Expected expected, boolean actOn) {}

    private static final Judgement KEPT = new Judgement(Standing.NOT_JUDGED, null, false);

    private ReadingRule() {}

    /** @throws IllegalArgumentException when the measure's unit does not measure what the reading asks for */
    public static Judgement judge(ReadingSpec spec, Measure measure, Circumstances circumstances) {
        if (spec.unit() == null) {
            throw new IllegalArgumentException(spec.code() + " has no unit");
        }
        UnitOfMeasure unit = UnitOfMeasure.ofCode(spec.unit());
        BigDecimal value = measure.in(unit);
        Optional<Expected> band = expected(spec.band(), unit, circumstances);
        Optional<Expected> limit = expected(spec.limit(), unit, circumstances);
        if (band.isEmpty() && limit.isEmpty()) {
            return KEPT;
        }
        Standing standing = band.map(figures -> figures.standing(value)).orElse(Standing.NOT_JUDGED);
        Standing atLimit = limit.map(figures -> figures.standing(value)).orElse(standing);
        return new Judgement(standing, band.orElse(null), atLimit != Standing.WITHIN && atLimit != Standing.NOT_JUDGED);
    }

    /** A yes or a no against the answer that is good. */
    public static Judgement judge(ReadingSpec spec, boolean yes) {
        if (!(spec.band() instanceof Band.Answer(boolean good))) {
            return KEPT;
        }
        return good == yes ? new Judgement(Standing.WITHIN, null, false) : new Judgement(Standing.BELOW, null, true);
    }

    /** |S - E| / max(S, E) in percent; nought when nothing flows. */
    public static BigDecimal imbalance(Measure supply, Measure exhaust) {
        BigDecimal in = supply.value();
        BigDecimal out = exhaust.in(supply.unit());
        BigDecimal larger = in.max(out);
        return larger.signum() == 0
                ? BigDecimal.ZERO
                : in.subtract(out).abs().multiply(BigDecimal.valueOf(100)).divide(larger, MathContext.DECIMAL64);
    }

    private static Optional<Expected> expected(@Nullable Band band, UnitOfMeasure unit, Circumstances circumstances) {
        return band == null ? Optional.empty() : Expected.of(band, unit, circumstances);
    }
}
