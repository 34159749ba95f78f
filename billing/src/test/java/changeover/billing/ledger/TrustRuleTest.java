package changeover.billing.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class TrustRuleTest {

    private static void check(String place, String sold, String first, boolean expected) {
        assertEquals(
                expected,
                TrustRule.of(place, LocalDate.parse(sold), LocalDate.parse(first))
                        .isPresent(),
                place + " " + sold + " " + first);
    }

    @Test
    void more_than_two_months_after_the_sale_where_the_place_has_a_row() {
        check("CA-QC", "2026-01-10", "2026-03-10", false);
        check("CA-QC", "2026-01-10", "2026-03-11", true);
        check("CA-QC", "2025-12-31", "2026-02-28", false);
        check("CA-QC", "2025-12-31", "2026-03-01", true);
        check("CA-ON", "2026-01-10", "2026-09-01", false);
        check("US-NY", "2026-01-10", "2026-09-01", false);
    }
}
