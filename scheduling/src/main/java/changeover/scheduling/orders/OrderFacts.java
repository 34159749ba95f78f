package changeover.scheduling.orders;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * What stands of an order.
 *
 * @param arrived of what was ordered
 * @param returned of what arrived
 * @param givenUp whether what has not come will not come
 * @param told whether the customer was told since all of it was here
 */
public record OrderFacts(
        BigDecimal ordered,
        BigDecimal arrived,
        BigDecimal returned,
        LocalDate expected,
        boolean givenUp,
        boolean told,
        Second second) {

    /** How far the visit that uses it has come; one that ended without being kept is none. */
    public enum Second {
        NONE,
        WITHOUT_DAY,
        HAS_A_DAY,
        KEPT
    }

    /** What is still to come. */
    public BigDecimal rest() {
        return givenUp ? BigDecimal.ZERO : ordered.subtract(arrived).max(BigDecimal.ZERO);
    }

    /** What came and did not go back. */
    public BigDecimal kept() {
        return arrived.subtract(returned).max(BigDecimal.ZERO);
    }
}
