package changeover.billing.fees;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Who is warned before a fixed fee is set, by place and fee. */
class FeeCautionTest {

    private static void check(String place, String fee, int rows) {
        assertEquals(rows, FeeCaution.of(place, fee).size(), place + " " + fee);
    }

    @Test
    void quebec_warns_of_every_fixed_fee_and_says_by_what() {
        for (String fee : List.of(FeeKind.RETURNED.code(), FeeKind.REMINDER.code(), FeeCaution.NO_ACCESS)) {
            check("CA-QC", fee, 1);
            check("CA-ON", fee, 0);
            check("US-QC", fee, 0);
        }
        check("CA-QC", "hour", 0);
        FeeCaution row = FeeCaution.of("CA-QC", FeeCaution.NO_ACCESS).getFirst();
        assertTrue(
                row.source().en().contains("s. 13") && !row.read(), row.source().en());
    }
}
