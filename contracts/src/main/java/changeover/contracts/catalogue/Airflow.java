package changeover.contracts.catalogue;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * The air that electric elements heat, from their power and the temperature rise: cfm = kW × 3412 ÷ (1.08 × rise in °F).
 *
 * <p>3412 Btu/h a kilowatt; 1.08 is the heat of standard air at sea level.
 */
public final class Airflow {

    private static final BigDecimal BTU_A_KILOWATT = BigDecimal.valueOf(3412);
    private static final BigDecimal STANDARD_AIR = new BigDecimal("1.08");

    private Airflow() {}

    /** @throws IllegalArgumentException when the rise is not above nought */
    public static Measure of(Measure power, Measure rise) {
        BigDecimal apart = rise.in(UnitOfMeasure.FAHRENHEIT_APART);
        if (apart.signum() <= 0) {
            throw new IllegalArgumentException("rise: " + apart);
        }
        BigDecimal kilowatts = power.in(UnitOfMeasure.KILOWATT);
        return new Measure(
                kilowatts.multiply(BTU_A_KILOWATT).divide(STANDARD_AIR.multiply(apart), MathContext.DECIMAL64),
                UnitOfMeasure.CUBIC_FOOT_PER_MINUTE);
    }
}
