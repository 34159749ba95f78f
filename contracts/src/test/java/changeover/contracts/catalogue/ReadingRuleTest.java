package changeover.contracts.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.catalogue.ReadingRule.Judgement;
import java.math.BigDecimal;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ReadingRuleTest {

    private static final Map<String, String> FIVE_KILOWATTS = Map.of("banks", "2", "bank-kw", "5", "volts", "240");

    @Test
    void elementsAreJudgedAtTheVoltsMeasured() {
        bank("20.8", "240", Standing.WITHIN);
        bank("19.5", "225", Standing.WITHIN);
        bank("17.6", "225", Standing.WITHIN);
        bank("17.5", "225", Standing.BELOW);
        bank("18.1", "208", Standing.WITHIN);
        bank("12.1", "240", Standing.BELOW);
        bank("23.0", "240", Standing.ABOVE);
        bank("0", "240", Standing.BELOW);
    }

    @Test
    void withoutTheVoltsOrThePlateNothingIsJudged() {
        ReadingSpec bank = reading("elements-amps", "bank-1-amps");
        assertEquals(
                Standing.NOT_JUDGED,
                ReadingRule.judge(bank, Measure.of("12", "A"), Circumstances.of(FIVE_KILOWATTS, Map.of()))
                        .standing());
        assertEquals(
                Standing.NOT_JUDGED,
                ReadingRule.judge(
                                bank,
                                Measure.of("12", "A"),
                                Circumstances.of(Map.of("bank-kw", "?"), Map.of("volts", Measure.of("240", "V"))))
                        .standing());
    }

    @Test
    void aDifferenceOfTemperaturesIsItsOwnQuantity() {
        difference("20", "degF-apart", Standing.WITHIN, false);
        difference("11.1", "K", Standing.WITHIN, false);
        difference("8", "K", Standing.BELOW, false);
        difference("7.7", "K", Standing.BELOW, true);
        difference("13", "K", Standing.ABOVE, false);
        difference("25", "degF-apart", Standing.ABOVE, true);
        ReadingSpec split = reading("cooling-split", "cooling-difference");
        assertThrows(
                IllegalArgumentException.class,
                () -> ReadingRule.judge(split, Measure.of("11", "degC"), Circumstances.NONE));
    }

    @Test
    void exchangerFlowsMayDifferByATenthOfTheLarger() {
        flows("100", "92", Standing.WITHIN);
        flows("100", "89", Standing.BELOW);
        flows("120", "131", Standing.WITHIN);
        flows("100", "90", Standing.WITHIN);
        flows("100", "112", Standing.ABOVE);
    }

    @Test
    void carbonMonoxideHasABandAndALimit() {
        ReadingSpec co = reading("gas-combustion", "co-air-free");
        check(ReadingRule.judge(co, Measure.of("60", "ppm"), Circumstances.NONE), Standing.WITHIN, false);
        check(ReadingRule.judge(co, Measure.of("250", "ppm"), Circumstances.NONE), Standing.ABOVE, false);
        check(ReadingRule.judge(co, Measure.of("400", "ppm"), Circumstances.NONE), Standing.ABOVE, false);
        check(ReadingRule.judge(co, Measure.of("401", "ppm"), Circumstances.NONE), Standing.ABOVE, true);
        check(ReadingRule.judge(co, Measure.of("0.05", "percent"), Circumstances.NONE), Standing.ABOVE, true);
    }

    @Test
    void thePlateGivesTheRest() {
        plate("capacitor", "capacitor-uf", "42.3", "uF", Map.of("capacitor-uf", "45"), Standing.WITHIN);
        plate("capacitor", "capacitor-uf", "42.2", "uF", Map.of("capacitor-uf", "45"), Standing.BELOW);
        plate("capacitor", "capacitor-uf", "45", "uF", Map.of("capacitor-uf", "45/5"), Standing.NOT_JUDGED);
        plate("external-static", "static", "0.61", "inwc", Map.of("static-max", "0,60"), Standing.ABOVE);
        plate("external-static", "static", "140", "Pa", Map.of("static-max", "0.60"), Standing.WITHIN);
        plate("external-static", "static", "0.9", "inwc", Map.of(), Standing.NOT_JUDGED);
        plate("rise-gas", "rise", "30", "K", Map.of("rise-low", "35", "rise-high", "65"), Standing.WITHIN);
        plate("rise-gas", "rise", "30", "degF-apart", Map.of("rise-low", "35", "rise-high", "65"), Standing.BELOW);
        plate("elements-ohms", "bank-1-ohms", "11.5", "ohm", FIVE_KILOWATTS, Standing.WITHIN);
        plate("elements-ohms", "bank-1-ohms", "999", "ohm", FIVE_KILOWATTS, Standing.ABOVE);
    }

    @Test
    void aYesIsGoodOrANoIs() {
        ReadingSpec ran = reading("drain-prove", "ran-freely");
        check(ReadingRule.judge(ran, true), Standing.WITHIN, false);
        assertTrue(ReadingRule.judge(ran, false).actOn());
    }

    @Test
    void aBankThatIsNotThereIsNotAsked() {
        assertTrue(reading("elements-amps", "bank-2-amps").isAskedOf(FIVE_KILOWATTS));
        assertFalse(reading("elements-amps", "bank-3-amps").isAskedOf(FIVE_KILOWATTS));
        assertTrue(reading("elements-amps", "bank-3-amps").isAskedOf(Map.of()));
    }

    private static void bank(String amps, String volts, Standing expected) {
        Circumstances circumstances = Circumstances.of(FIVE_KILOWATTS, Map.of("volts", Measure.of(volts, "V")));
        check(
                ReadingRule.judge(reading("elements-amps", "bank-1-amps"), Measure.of(amps, "A"), circumstances),
                expected,
                expected != Standing.WITHIN);
    }

    private static void difference(String value, String unit, Standing expected, boolean act) {
        check(
                ReadingRule.judge(
                        reading("cooling-split", "cooling-difference"), Measure.of(value, unit), Circumstances.NONE),
                expected,
                act);
    }

    private static void flows(String supply, String exhaust, Standing expected) {
        Measure in = Measure.of(supply, "L/s");
        Measure out = Measure.of(exhaust, "L/s");
        Circumstances circumstances = Circumstances.of(Map.of(), Map.of("supply-flow", in));
        ReadingSpec spec = reading("exchanger-flows", "exhaust-flow");
        assertEquals(expected, ReadingRule.judge(spec, out, circumstances).standing(), supply + "/" + exhaust);
        boolean balanced = ReadingRule.imbalance(in, out).compareTo(BigDecimal.TEN) <= 0;
        assertEquals(expected == Standing.WITHIN, balanced, supply + "/" + exhaust);
    }

    private static void plate(
            String task, String code, String value, String unit, Map<String, String> plate, Standing expected) {
        Judgement judgement =
                ReadingRule.judge(reading(task, code), Measure.of(value, unit), Circumstances.of(plate, Map.of()));
        assertEquals(expected, judgement.standing(), task + " " + value + " " + plate);
    }

    private static void check(Judgement judgement, Standing standing, boolean act) {
        assertEquals(standing, judgement.standing(), judgement.toString());
        assertEquals(act, judgement.actOn(), judgement.toString());
    }

    private static ReadingSpec reading(String task, String code) {
        return Catalogue.shipped().task(task).reading(code).orElseThrow();
    }
}
