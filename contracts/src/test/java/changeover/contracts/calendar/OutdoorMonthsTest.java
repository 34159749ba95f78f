package changeover.contracts.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;

class OutdoorMonthsTest {

    private static final List<OutdoorMonths> ROWS = List.of(
            row("", "2020-01-01", "--05-15"),
            row("CA", "2021-01-01", "--05-10"),
            row("CA-BC", "2021-01-01", "--05-01"),
            row("CA-BC", "2027-01-01", "--04-20"));

    private static OutdoorMonths row(String place, String from, String first) {
        return new OutdoorMonths(
                place,
                LocalDate.parse(from),
                new BigDecimal(18),
                MonthDay.parse(first),
                MonthDay.of(9, 15),
                new Wording("why", "pourquoi"),
                "source");
    }

    private static void check(String place, String day, String first) {
        assertEquals(
                MonthDay.parse(first),
                OutdoorMonths.at(ROWS, place, LocalDate.parse(day)).first());
    }

    @Test
    void theRegionsOwnRowStandsBeforeTheCountrysAndThatBeforeEverywheres() {
        check("CA-BC", "2026-06-01", "--05-01");
        check("CA-ON", "2026-06-01", "--05-10");
        check("US-NY", "2026-06-01", "--05-15");
        check("CAX-1", "2026-06-01", "--05-15");
    }

    @Test
    void aLaterRowTakesItsPlaceFromItsDayOn() {
        check("CA-BC", "2026-12-31", "--05-01");
        check("CA-BC", "2027-01-01", "--04-20");
        check("CA-BC", "2020-12-31", "--05-15");
        check("CA-BC", "2019-12-31", "--05-15");
    }

    @Test
    void whatIsShippedSaysWhatItRestsOn() {
        assertTrue(OutdoorMonths.all().stream().anyMatch(row -> row.place().isEmpty()));
        for (OutdoorMonths row : OutdoorMonths.all()) {
            assertTrue(row.first().isBefore(row.last()), row.place());
            assertFalse(row.source().isBlank(), row.place());
            assertFalse(row.basis().en().isBlank() || row.basis().fr().isBlank(), row.place());
        }
    }

    /** 16.2 °C in the middle of April and 21.6 in May, 24.0 in the middle of September and 17.7 in October. */
    @Test
    void newYorksDaysLieOnTheStraightLineBetweenTheMonths() {
        OutdoorMonths newYork = OutdoorMonths.at("US-NY", LocalDate.of(2026, 1, 1));
        assertEquals(
                newYork.first(),
                MonthDay.from(LocalDate.of(2026, 4, 15).plusDays(Math.round(30 * (18 - 16.2) / (21.6 - 16.2)))));
        assertEquals(newYork.last(), MonthDay.from(LocalDate.of(2026, 9, 15).plusDays((long)
                (30 * (24.0 - 18) / (24.0 - 17.7)))));
    }

    @Test
    void aBusinessBeginsWithTheWarmMonthsOfItsPlace() {
        LocalDate day = LocalDate.of(2026, 1, 1);
        assertEquals(Climate.cold(), Climate.at("CA-QC", day));
        Season warm = Climate.at("US-NY", day).find(Climate.WARM).orElseThrow();
        assertEquals(MonthDay.of(4, 25), warm.first());
        assertEquals(MonthDay.of(10, 13), warm.last());
        assertTrue(Climate.isShipped(Climate.WARM, warm.first(), warm.last()));
        assertFalse(Climate.isShipped(Climate.COOLING, warm.first(), warm.last()));
    }
}
