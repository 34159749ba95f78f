package changeover.contracts.catalogue;

import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/**
 * The units that readings are taken in, each by its UN/ECE Recommendation 20 code and its exact or published factor to
 * the base unit of its quantity.
 *
 * <p>Factors: NIST Special Publication 811 (2008), appendix B.8; inch of water is the conventional one. 20 °F apart is
 * 11.1 K, 20 °F as a temperature is -6.7 °C: they never mix.
 */
public enum UnitOfMeasure {
    CELSIUS("degC", "CEL", Quantity.TEMPERATURE, "°C", "1", "1", "0"),
    FAHRENHEIT("degF", "FAH", Quantity.TEMPERATURE, "°F", "5", "9", "-32"),
    KELVIN_APART("K", "KEL", Quantity.TEMPERATURE_DIFFERENCE, "K", "1", "1", "0"),
    FAHRENHEIT_APART("degF-apart", "FAH", Quantity.TEMPERATURE_DIFFERENCE, "°F apart", "5", "9", "0"),
    AMPERE("A", "AMP", Quantity.CURRENT, "A", "1", "1", "0"),
    MICROAMPERE("uA", "B84", Quantity.CURRENT, "µA", "1", "1000000", "0"),
    VOLT("V", "VLT", Quantity.VOLTAGE, "V", "1", "1", "0"),
    OHM("ohm", "OHM", Quantity.RESISTANCE, "Ω", "1", "1", "0"),
    MICROFARAD("uF", "4O", Quantity.CAPACITANCE, "µF", "1", "1", "0"),
    KILOWATT("kW", "KWT", Quantity.POWER, "kW", "1000", "1", "0"),
    WATT("W", "WTT", Quantity.POWER, "W", "1", "1", "0"),
    PASCAL("Pa", "PAL", Quantity.PRESSURE, "Pa", "1", "1", "0"),
    KILOPASCAL("kPa", "KPA", Quantity.PRESSURE, "kPa", "1000", "1", "0"),
    INCH_OF_WATER("inwc", "F78", Quantity.PRESSURE, "in. w.c.", "249.0889", "1", "0"),
    POUND_PER_SQUARE_INCH("psi", "PS", Quantity.PRESSURE, "psi", "6894.757", "1", "0"),
    LITRE_PER_SECOND("L/s", "G51", Quantity.FLOW, "L/s", "1", "1", "0"),
    CUBIC_FOOT_PER_MINUTE("cfm", "2L", Quantity.FLOW, "cfm", "0.4719474432", "1", "0"),
    CUBIC_METRE_PER_HOUR("m3/h", "MQH", Quantity.FLOW, "m³/h", "1000", "3600", "0"),
    PART_PER_MILLION("ppm", "59", Quantity.SHARE, "ppm", "1", "1000000", "0"),
    PERCENT("percent", "P1", Quantity.SHARE, "%", "1", "100", "0"),
    MILLIMETRE("mm", "MMT", Quantity.LENGTH, "mm", "1", "1000", "0"),
    CENTIMETRE("cm", "CMT", Quantity.LENGTH, "cm", "1", "100", "0"),
    METRE("m", "MTR", Quantity.LENGTH, "m", "1", "1", "0"),
    INCH("in", "INH", Quantity.LENGTH, "in.", "0.0254", "1", "0"),
    LITRE("L", "LTR", Quantity.VOLUME, "L", "1", "1", "0"),
    KILOGRAM("kg", "KGM", Quantity.MASS, "kg", "1", "1", "0"),
    GRAM("g", "GRM", Quantity.MASS, "g", "1", "1000", "0"),
    POUND("lb", "LBR", Quantity.MASS, "lb", "0.45359237", "1", "0"),
    OUNCE("oz", "ONZ", Quantity.MASS, "oz", "0.45359237", "16", "0"),
    MINUTE("min", "MIN", Quantity.DURATION, "min", "1", "1", "0"),
    MONTH("month", "MON", Quantity.DURATION, "months", "43829.1", "1", "0"),
    ONE("count", "C62", Quantity.COUNT, "", "1", "1", "0");

    private final String code;
    private final String rec20;
    private final Quantity quantity;
    private final String symbol;
    private final BigDecimal multiplier;
    private final BigDecimal divisor;
    private final BigDecimal shift;

    /** To the base unit: (value + shift) × multiplier ÷ divisor. */
    UnitOfMeasure(
            String code,
            String rec20,
            Quantity quantity,
            String symbol,
            String multiplier,
            String divisor,
            String shift) {
        this.code = code;
        this.rec20 = rec20;
        this.quantity = quantity;
        this.symbol = symbol;
        this.multiplier = new BigDecimal(multiplier);
        this.divisor = new BigDecimal(divisor);
        this.shift = new BigDecimal(shift);
    }

    /** As the catalogue's data and the operations write it: {@code degF-apart}. */
    public String code() {
        return code;
    }

    /** UN/ECE Recommendation 20; it has one code for a temperature and a difference of temperatures. */
    public String rec20() {
        return rec20;
    }

    public Quantity quantity() {
        return quantity;
    }

    public Wording symbol() {
        return switch (this) {
            case FAHRENHEIT_APART -> new Wording(symbol, "°F d’écart");
            case INCH_OF_WATER -> new Wording(symbol, "po d’eau");
            case INCH -> new Wording(symbol, "po");
            case CUBIC_FOOT_PER_MINUTE -> new Wording(symbol, "pi³/min");
            case POUND -> new Wording(symbol, "lb");
            case POUND_PER_SQUARE_INCH -> new Wording(symbol, "lb/po²");
            case MONTH -> new Wording(symbol, "mois");
            default -> new Wording(symbol, symbol);
        };
    }

    public boolean convertsTo(UnitOfMeasure other) {
        return quantity == other.quantity;
    }

    /**
     * The same value in another unit of the same quantity, to sixteen digits.
     *
     * @throws IllegalArgumentException when the other measures something else
     */
    public BigDecimal convert(BigDecimal value, UnitOfMeasure to) {
        if (!convertsTo(to)) {
            throw new IllegalArgumentException(code + " is no " + to.code);
        }
        if (this == to) {
            return value;
        }
        BigDecimal base = value.add(shift).multiply(multiplier).divide(divisor, MathContext.DECIMAL64);
        return base.multiply(to.divisor)
                .divide(to.multiplier, MathContext.DECIMAL64)
                .subtract(to.shift);
    }

    public static Optional<UnitOfMeasure> find(String code) {
        for (UnitOfMeasure unit : values()) {
            if (unit.code.equals(code)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    /** @throws IllegalArgumentException when no unit has that code */
    public static UnitOfMeasure ofCode(String code) {
        return find(code).orElseThrow(() -> new IllegalArgumentException("unit: " + code));
    }
}
