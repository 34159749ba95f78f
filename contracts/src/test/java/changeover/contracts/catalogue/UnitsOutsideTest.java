package changeover.contracts.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Unit codes and factors as published. */
class UnitsOutsideTest {

    /** UN/ECE Recommendation 20 (with 21) as listed for Peppol BIS Billing 3, UNECERec20-11e, 2025. */
    private static final Map<String, String> REC20 = Map.ofEntries(
            Map.entry("HUR", "hour"),
            Map.entry("MIN", "minute"),
            Map.entry("DAY", "day"),
            Map.entry("WEE", "week"),
            Map.entry("MON", "month"),
            Map.entry("QAN", "quarter"),
            Map.entry("ANN", "year"),
            Map.entry("C62", "one"),
            Map.entry("H87", "piece"),
            Map.entry("EA", "each"),
            Map.entry("SET", "set"),
            Map.entry("PR", "pair"),
            Map.entry("LS", "lump sum"),
            Map.entry("E48", "service unit"),
            Map.entry("MTR", "metre"),
            Map.entry("FOT", "foot"),
            Map.entry("MTK", "square metre"),
            Map.entry("FTK", "square foot"),
            Map.entry("KGM", "kilogram"),
            Map.entry("GRM", "gram"),
            Map.entry("LBR", "pound"),
            Map.entry("ONZ", "ounce"),
            Map.entry("LTR", "litre"),
            Map.entry("MLT", "millilitre"),
            Map.entry("KMT", "kilometre"),
            Map.entry("SMI", "mile"),
            Map.entry("KWH", "kilowatt hour"));

    /** The same list's codes for what is measured. */
    private static final Map<UnitOfMeasure, String> MEASURED = Map.ofEntries(
            Map.entry(UnitOfMeasure.CELSIUS, "CEL"),
            Map.entry(UnitOfMeasure.FAHRENHEIT, "FAH"),
            Map.entry(UnitOfMeasure.KELVIN_APART, "KEL"),
            Map.entry(UnitOfMeasure.AMPERE, "AMP"),
            Map.entry(UnitOfMeasure.MICROAMPERE, "B84"),
            Map.entry(UnitOfMeasure.MICROFARAD, "4O"),
            Map.entry(UnitOfMeasure.INCH_OF_WATER, "F78"),
            Map.entry(UnitOfMeasure.LITRE_PER_SECOND, "G51"),
            Map.entry(UnitOfMeasure.CUBIC_FOOT_PER_MINUTE, "2L"),
            Map.entry(UnitOfMeasure.PART_PER_MILLION, "59"),
            Map.entry(UnitOfMeasure.PERCENT, "P1"));

    @Test
    void partsAndHoursAreCountedInRecommendation20() {
        assertEquals(REC20.size(), TradeUnit.values().length);
        for (TradeUnit unit : TradeUnit.values()) {
            assertEquals(REC20.get(unit.code()), unit.wording().en());
        }
        MEASURED.forEach((unit, code) -> assertEquals(code, unit.rec20()));
    }

    /** NIST Special Publication 811 (2008), appendix B.8. */
    @Test
    void factorsOfNist() {
        converts("1", "inwc", "Pa", "249.0889");
        converts("1", "cfm", "L/s", "0.4719474");
        converts("1", "psi", "kPa", "6.894757");
        converts("1", "lb", "kg", "0.4535924");
        converts("1", "in", "mm", "25.40000");
        converts("212", "degF", "degC", "100.0000");
        converts("-40", "degF", "degC", "-40.00000");
        converts("100", "degC", "degF", "212.0000");
    }

    /** A difference of temperatures is its own quantity: 20 °F apart is 11.1 K, 20 °F as a temperature is -6.7 °C. */
    @Test
    void twentyDegreesApartAreNotTwentyDegrees() {
        converts("20", "degF-apart", "K", "11.11111");
        converts("20", "degF", "degC", "-6.666667");
        assertThrows(
                IllegalArgumentException.class,
                () -> Measure.of("20", "degF-apart").in(UnitOfMeasure.CELSIUS));
    }

    @Test
    void thereAndBackGivesTheSame() {
        for (UnitOfMeasure from : UnitOfMeasure.values()) {
            for (UnitOfMeasure to : UnitOfMeasure.values()) {
                if (from.convertsTo(to)) {
                    BigDecimal value = new BigDecimal("17.25");
                    BigDecimal back = to.convert(from.convert(value, to), from);
                    assertEquals(0, value.compareTo(back.round(new MathContext(12))), from + " " + to);
                }
            }
        }
    }

    private static void converts(String value, String from, String to, String expected) {
        BigDecimal converted = Measure.of(value, from).in(UnitOfMeasure.ofCode(to));
        BigDecimal figure = new BigDecimal(expected);
        assertEquals(0, figure.compareTo(converted.round(new MathContext(figure.precision()))), from + " " + converted);
    }
}
