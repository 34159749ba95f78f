package changeover.web.office;

import changeover.billing.ledger.Period;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.web.session.Typed;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The days that an address asks for; without them the last quarter that is over.
 *
 * @param refusals why the days asked for are none, when they are none
 */
record PeriodAsked(Period period, List<Refusal> refusals) {

    static PeriodAsked of(Typed typed, LocalDate today) {
        Period last = Period.lastQuarter(today);
        try {
            @Nullable LocalDate from = typed.dayOrNone("from");
            @Nullable LocalDate until = typed.dayOrNone("until");
            typed.understood();
            return new PeriodAsked(
                    from == null && until == null
                            ? last
                            : new Period(from == null ? last.from() : from, until == null ? today : until),
                    List.of());
        } catch (Refused refused) {
            return new PeriodAsked(last, refused.refusals());
        }
    }

    /** What stands in the two fields. */
    Map<String, String> fields() {
        return Map.of("from", period.from().toString(), "until", period.until().toString());
    }

    /** The same days in another address. */
    String query() {
        return "from=" + period.from() + "&until=" + period.until();
    }
}
