package changeover.contracts.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class CsvTableTest {

    private static void check(Object cell, String written) {
        assertEquals(
                "a\r\n" + written + "\r\n",
                new String(new CsvTable("a").row(cell).bytes(), StandardCharsets.UTF_8));
    }

    @Test
    void texts_are_quoted_and_guarded_numbers_and_days_are_as_they_are() {
        check("plain", "plain");
        check("one, two", "\"one, two\"");
        check("say \"yes\"", "\"say \"\"yes\"\"\"");
        check("two\nlines", "\"two\nlines\"");
        check("=1+1", "'=1+1");
        check("-12.00", "'-12.00");
        check("@home", "'@home");
        check("'=1", "''=1");
        check(new BigDecimal("-12.00"), "-12.00");
        check(new BigDecimal("2E+1"), "20");
        check(LocalDate.of(2026, 4, 1), "2026-04-01");
        check(7, "7");
    }
}
