package changeover.web.office;

import changeover.billing.ledger.Period;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.web.session.Frame;
import changeover.web.session.Typed;
import jakarta.ws.rs.core.UriInfo;
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
        try {
            @Nullable LocalDate from = typed.dayOrNone("from");
            @Nullable LocalDate until = typed.dayOrNone("until");
            typed.understood();
            return new PeriodAsked(Period.asked(from, until, today), List.of());
        } catch (Refused refused) {
            return new PeriodAsked(Period.lastQuarter(today), refused.refusals());
        }
    }

    /** The same where no page brings the fields back: days that are none are refused. */
    static PeriodAsked understood(UriInfo asked, LocalDate today) {
        PeriodAsked period = of(new Typed(asked.getQueryParameters()), today);
        if (!period.refusals().isEmpty()) {
            throw new Refused(period.refusals());
        }
        return period;
    }

    /** In words: {@code 1 April 2026 – 30 June 2026}. */
    static String inWords(Period period, Frame frame) {
        return frame.inWords(period.from()) + " – " + frame.inWords(period.until());
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
