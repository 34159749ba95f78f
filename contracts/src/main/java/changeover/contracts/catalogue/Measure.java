package changeover.contracts.catalogue;

import java.math.BigDecimal;

/** A value as it was read, with the unit it was read in; the unit is kept as entered. */
public record Measure(BigDecimal value, UnitOfMeasure unit) {

    /** {@code Measure.of("20.8", "A")}. */
    public static Measure of(String value, String unitCode) {
        return new Measure(new BigDecimal(value.strip().replace(',', '.')), UnitOfMeasure.ofCode(unitCode));
    }

    /** @throws IllegalArgumentException when the other unit measures something else */
    public BigDecimal in(UnitOfMeasure other) {
        return unit.convert(value, other);
    }
}
