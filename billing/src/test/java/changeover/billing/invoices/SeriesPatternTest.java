package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.contracts.words.Refused;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class SeriesPatternTest {

    static final LocalDate DAY = LocalDate.of(2026, 4, 1);

    @Test
    void the_series_is_what_stands_before_the_number() {
        check("F-{year}-{number:4}", 391, "F-2026-", "F-2026-0391");
        check("F-{year}-{number:4}", 12345, "F-2026-", "F-2026-12345");
        check("INV{yy}/{number}", 7, "INV26/", "INV26/7");
        check("{number}", 7, "#", "7");
        check("{number:6}", 7, "#", "000007");
        check("Shop 2 {number}", 7, "Shop 2 ", "Shop 2 7");
    }

    @Test
    void a_pattern_without_its_number_at_the_end_is_refused() {
        for (String pattern : List.of(
                "",
                "F-",
                "{number}-F",
                "{number}{number}",
                "F-{jahr}-{number}",
                "<b>{number}",
                "F\n{number}",
                "{number:0}")) {
            assertThrows(Refused.class, () -> SeriesPattern.of(pattern), pattern);
        }
    }

    @Test
    void a_fiscal_year_begins_in_the_month_that_the_business_says() {
        for (String row : List.of(
                "F-{fiscal:4}-{number:4} 2026-03-31 F-2025-26-0007",
                "F-{fiscal:4}-{number:4} 2026-04-01 F-2026-27-0007",
                "F-{fiscal:4}-{number:4} 2027-03-31 F-2026-27-0007",
                "{fiscal:1}/{number} 2026-12-31 2026/7",
                "{fiscal:12}/{number} 2026-11-30 2025-26/7",
                "{fiscal:12}/{number} 2099-12-01 2099-00/7")) {
            String[] said = row.split(" ");
            assertEquals(said[2], SeriesPattern.of(said[0]).label(LocalDate.parse(said[1]), 7), row);
        }
        for (String pattern : List.of("F-{fiscal}-{number}", "F-{fiscal:0}-{number}", "F-{fiscal:13}-{number}")) {
            assertThrows(Refused.class, () -> SeriesPattern.of(pattern), pattern);
        }
    }

    private static void check(String pattern, long number, String series, String label) {
        SeriesPattern read = SeriesPattern.of(pattern);
        assertEquals(series, read.series(DAY));
        assertEquals(label, read.label(DAY, number));
    }
}
