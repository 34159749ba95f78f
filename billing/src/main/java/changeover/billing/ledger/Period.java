package changeover.billing.ledger;

import changeover.contracts.words.Refusal;
import java.time.LocalDate;
import java.time.temporal.IsoFields;

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

    /** The last quarter of the calendar that is over on the day. */
    public static Period lastQuarter(LocalDate today) {
        LocalDate begun = today.with(IsoFields.DAY_OF_QUARTER, 1);
        return new Period(begun.minusMonths(3), begun.minusDays(1));
    }
}
