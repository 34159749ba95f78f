package changeover.contracts.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Figures of the trade as others publish them. */
class CatalogueOutsideTest {

    private final Term year = Term.ofYear(LocalDate.of(2026, 1, 1));

    /**
     * Natural Resources Canada, Office of Energy Efficiency, HRV maintenance chart: filters every 1 to 3 months, outside
     * hoods every 1 to 3 months, core, drain and pans every 6 months, fans every 3 to 6 months, dehumidistat seasonally,
     * grilles, defrost and the contractor's measured airflows annually.
     */
    @Test
    void theExchangersYearIsTheChartOfNaturalResourcesCanada() {
        times("exchanger-filters", 4, 12);
        times("exchanger-hoods", 4, 12);
        times("exchanger-core-hrv", 2, 2);
        times("exchanger-drain", 2, 2);
        times("exchanger-fans", 2, 4);
        times("exchanger-dehumidistat", 2, 4);
        times("exchanger-grilles", 1, 1);
        times("exchanger-defrost", 1, 1);
        times("exchanger-flows", 1, 1);
    }

    /** Ohm's law at the nameplate: 5 kW at 240 V is 20.83 A and 11.52 ohm, and 3,756 W at 208 V. */
    @Test
    void elementsFollowOhmsLaw() {
        element("5", "240", "20.83", "11.52");
        element("10", "240", "41.67", "5.76");
        element("4.5", "240", "18.75", "12.80");
        assertEquals(
                "3756",
                new BigDecimal(208 * 208)
                        .divide(ohms("5", "240"), 0, RoundingMode.HALF_UP)
                        .toString());
    }

    /** ACCA Manual airflow relation: 15 kW with a rise of 45 °F moves 1,053 cfm. */
    @Test
    void elementsTellTheAirflow() {
        Measure airflow = Airflow.of(Measure.of("15", "kW"), Measure.of("45", "degF-apart"));
        assertEquals("1053", airflow.value().setScale(0, RoundingMode.HALF_UP).toString());
        assertEquals(
                "497",
                airflow.in(UnitOfMeasure.LITRE_PER_SECOND)
                        .setScale(0, RoundingMode.HALF_UP)
                        .toString());
    }

    /** Federal Halocarbon Regulations, 2022 (SOR/2022-110), ss. 17 and 25. */
    @Test
    void federalLeakTestsAndReports() {
        test("2025-02-10", "2026-05-10");
        test("2025-11-30", "2026-12-31");
        test("2024-12-31", "2025-12-31");
        assertEquals(LocalDate.of(2026, 7, 31), FederalHalocarbons.reportDue(LocalDate.of(2026, 5, 20)));
        assertEquals(LocalDate.of(2027, 1, 31), FederalHalocarbons.reportDue(LocalDate.of(2026, 9, 1)));
    }

    /** French environment code, art. R224-44: a heat pump of 4 to 70 kW is serviced at most every two years. */
    @Test
    void aFrenchHeatPumpIsServicedWithinTwoYears() {
        var windows = new Cadence.EveryMonths(24, 12, 24)
                .windowsIn(year, History.doneOn(LocalDate.of(2024, 11, 25)), SeasonRules.USUAL);
        assertEquals(LocalDate.of(2026, 11, 25), windows.getFirst().last());
    }

    private void times(String task, int least, int most) {
        int times = Catalogue.shipped()
                .task(task)
                .cadence()
                .windowsIn(year, History.doneOn(LocalDate.of(2025, 12, 31)), SeasonRules.USUAL)
                .size();
        assertTrue(times >= least && times <= most, task + " " + times);
    }

    private static void element(String kilowatts, String volts, String amps, String ohms) {
        assertEquals(
                ohms, ohms(kilowatts, volts).setScale(2, RoundingMode.HALF_UP).toString());
        Expected expected = Expected.of(
                        new Band.ElementAmps("kw", "volts", "measured", BigDecimal.ZERO),
                        UnitOfMeasure.AMPERE,
                        Circumstances.of(
                                Map.of("kw", kilowatts, "volts", volts), Map.of("measured", Measure.of(volts, "V"))))
                .orElseThrow();
        assertEquals(amps, scaled(expected));
    }

    private static String scaled(Expected expected) {
        BigDecimal low = expected.low();
        assertEquals(low, expected.high());
        return low == null ? "" : low.setScale(2, RoundingMode.HALF_UP).toString();
    }

    private static BigDecimal ohms(String kilowatts, String volts) {
        BigDecimal low = Expected.of(
                        new Band.ElementOhms("kw", "volts", BigDecimal.ZERO),
                        UnitOfMeasure.OHM,
                        Circumstances.of(Map.of("kw", kilowatts, "volts", volts), Map.of()))
                .orElseThrow()
                .low();
        return low == null ? BigDecimal.ZERO : low;
    }

    private static void test(String last, String due) {
        assertEquals(LocalDate.parse(due), FederalHalocarbons.nextTest(LocalDate.parse(last)));
    }
}
