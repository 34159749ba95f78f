package changeover.billing.costs;

import changeover.contracts.calendar.Term;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An accepted agreement as far as its cost asks.
 *
 * @param visits that it sells for the term
 * @param parts that it gives for the term, by kind of part
 * @param ended the first day on which it no longer held, or null
 */
public record Deal(
        UUID agreementId,
        int number,
        UUID planId,
        Wording plan,
        UUID homeId,
        String home,
        Term term,
        long priceMinor,
        int visits,
        Map<String, BigDecimal> parts,
        @Nullable LocalDate ended) {

    public Deal {
        parts = Map.copyOf(parts);
    }

    /** Whether it holds on the day. */
    public boolean holds(LocalDate day) {
        return !day.isBefore(term.from()) && day.isBefore(term.until()) && (ended == null || ended.isAfter(day));
    }
}
