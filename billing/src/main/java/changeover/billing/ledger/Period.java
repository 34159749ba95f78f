package changeover.billing.ledger;

import changeover.contracts.words.Refusal;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import org.jspecify.annotations.Nullable;

/**
 * The days that a report is about.
 *
 * @param until the last day, in
 */
public record Period(LocalDate from, LocalDate until) {

    /** @throws changeover.contracts.words.Refused when it ends before it begins */
    public Period {
        if (until.isBefore(from)) {
            throw Refusal.of("period.backwards").at("until").thrown();
        }
    }

    /** The days that were asked for: to today where no end is said, from the last quarter's first day where no beginning is. */
    public static Period asked(@Nullable LocalDate from, @Nullable LocalDate until, LocalDate today) {
        Period last = lastQuarter(today);
        return from == null && until == null
                ? last
                : new Period(from == null ? last.from() : from, until == null ? today : until);
    }

    /** The last quarter of the calendar that is over on the day. */
    public static Period lastQuarter(LocalDate today) {
        LocalDate begun = today.with(IsoFields.DAY_OF_QUARTER, 1);
        return new Period(begun.minusMonths(3), begun.minusDays(1));
    }
}
