package changeover.contracts.catalogue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The figures between which a reading is expected, in the reading's own unit, both ends in; a null end is open.
 */
public record Expected(@Nullable BigDecimal low, @Nullable BigDecimal high) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

    /** What the band means for this machine; empty when a figure it needs is not known, or it is a yes or no. */
    public static Optional<Expected> of(Band band, UnitOfMeasure unit, Circumstances circumstances) {
        return switch (band) {
            case Band.Fixed(var low, var high) -> Optional.of(new Expected(low, high));
            case Band.Answer _ -> Optional.empty();
            case Band.PlateTolerance(String plate, BigDecimal percent) ->
                circumstances.plate(plate).map(figure -> around(figure, percent));
            case Band.PlateRange(String low, String high) -> range(low, high, circumstances);
            case Band.ElementAmps(String kilowatts, String plateVolts, String volts, BigDecimal percent) ->
                circumstances
                        .reading(volts, UnitOfMeasure.VOLT)
                        .flatMap(measured -> ohms(kilowatts, plateVolts, circumstances)
                                .map(ohms -> around(measured.divide(ohms, MathContext.DECIMAL64), percent)));
            case Band.ElementOhms(String kilowatts, String plateVolts, BigDecimal percent) ->
                ohms(kilowatts, plateVolts, circumstances).map(ohms -> around(ohms, percent));
            case Band.Imbalance(String with, BigDecimal percent) ->
                circumstances.reading(with, unit).map(other -> balanced(other, percent));
        };
    }

    private static Optional<Expected> range(@Nullable String low, @Nullable String high, Circumstances circumstances) {
        Optional<BigDecimal> least = Optional.ofNullable(low).flatMap(circumstances::plate);
        Optional<BigDecimal> most = Optional.ofNullable(high).flatMap(circumstances::plate);
        return least.isEmpty() && most.isEmpty()
                ? Optional.empty()
                : Optional.of(new Expected(least.orElse(null), most.orElse(null)));
    }

    /** R = V² / P. */
    private static Optional<BigDecimal> ohms(String kilowatts, String plateVolts, Circumstances circumstances) {
        return circumstances
                .plate(kilowatts)
                .filter(power -> power.signum() > 0)
                .flatMap(power -> circumstances
                        .plate(plateVolts)
                        .filter(volts -> volts.signum() > 0)
                        .map(volts -> volts.multiply(volts).divide(power.multiply(THOUSAND), MathContext.DECIMAL64)));
    }

    private static Expected around(BigDecimal figure, BigDecimal percent) {
        BigDecimal slack = figure.multiply(percent).divide(HUNDRED, MathContext.DECIMAL64);
        return new Expected(figure.subtract(slack), figure.add(slack));
    }

    private static Expected balanced(BigDecimal other, BigDecimal percent) {
        BigDecimal left = BigDecimal.ONE.subtract(percent.divide(HUNDRED, MathContext.DECIMAL64));
        return new Expected(other.multiply(left), other.divide(left, MathContext.DECIMAL64));
    }

    Standing standing(BigDecimal value) {
        if (low != null && value.compareTo(low) < 0) {
            return Standing.BELOW;
        }
        return high != null && value.compareTo(high) > 0 ? Standing.ABOVE : Standing.WITHIN;
    }
}
