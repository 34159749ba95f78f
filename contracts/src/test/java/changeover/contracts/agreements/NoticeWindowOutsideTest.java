package changeover.contracts.agreements;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** Windows counted by hand from the laws' own words, for a term that ends on 31 March 2027. */
class NoticeWindowOutsideTest {

    private static final LocalDate TERM_END = LocalDate.of(2027, 3, 31);

    /** Consumer Protection Act (CQLR c. P-40.1), s. 214.3: "between the 90th and the 60th day before the expiry date". */
    @Test
    void quebec() {
        check("CA-QC", TERM_END, "2026-12-31", "2027-01-30");
    }

    /** New York General Obligations Law § 5-903: 15 to 30 days before the time for the customer's own notice. */
    @Test
    void newYork() {
        check("US-NY", LocalDate.of(2027, 3, 1), "2027-01-30", "2027-02-14");
    }

    /** California Business and Professions Code § 17602: 15 to 45 days before renewal. */
    @Test
    void california() {
        check("US-CA", TERM_END, "2027-02-14", "2027-03-16");
    }

    /** Code de la consommation, art. L215-1: three months to one month before the end of the refusal period. */
    @Test
    void france() {
        check("FR", LocalDate.of(2027, 1, 31), "2026-10-31", "2026-12-31");
        check("FR", LocalDate.of(2027, 5, 31), "2027-02-28", "2027-04-30");
    }

    @Test
    void elsewhereTheTradesHabit() {
        check("CA-ON", TERM_END, "2027-01-30", "2027-03-01");
        assertEquals("habit-60-30", NoticeWindow.of("CA-ON", TERM_END).rule());
    }

    @Test
    void theNoticeIsPlannedInTheMiddle() {
        assertEquals(
                LocalDate.of(2027, 1, 15), NoticeWindow.of("CA-QC", TERM_END).planned());
    }

    private static void check(String place, LocalDate deadline, String earliest, String latest) {
        NoticeWindow window = NoticeWindow.of(place, TERM_END, deadline);
        assertEquals(LocalDate.parse(earliest), window.earliest(), place);
        assertEquals(LocalDate.parse(latest), window.latest(), place);
    }
}
