package changeover.scheduling.deferred;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.Season;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A reading that asks for 18 degrees outdoors, where the warm months go from 15 May to 15 September. */
class WhyPutOffTest {

    private static final Season WARM = Climate.cold().find(Climate.WARM).orElseThrow();

    private static void check(String day, @Nullable String cause, @Nullable String outdoor, boolean cold) {
        WhyPutOff why = new WhyPutOff(
                LocalDate.parse(day), cause, outdoor == null ? null : new BigDecimal(outdoor), new BigDecimal(18));
        assertEquals(cold, why.cold(WARM), day + " " + cause + " " + outdoor);
    }

    @Test
    void whatTheTechnicianSaidCounts() {
        check("2026-04-20", "cold", null, true);
        check("2026-04-20", "other", null, false);
        check("2026-06-20", "cold", null, true);
        check("2026-06-20", "cold", "21", true);
        check("2026-04-20", "other", "8", false);
    }

    @Test
    void whereNobodySaidTheThermometerDoes() {
        check("2026-04-20", null, "17.9", true);
        check("2026-04-20", null, "18", false);
        check("2026-04-20", null, "24", false);
        check("2026-06-20", null, "12", true);
    }

    @Test
    void withoutEitherItWasColdOutsideTheWarmMonths() {
        check("2026-05-14", null, null, true);
        check("2026-05-15", null, null, false);
        check("2026-09-15", null, null, false);
        check("2026-09-16", null, null, true);
    }
}
