package changeover.web.portal;

import changeover.billing.estimates.AskingForMore;
import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.EstimateState;
import changeover.billing.estimates.Estimates;
import changeover.contracts.money.Money;
import changeover.web.session.Frame;
import changeover.web.session.Written;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** An offered estimate in the customer's words: what it costs, how it stands, and what is asked of them. */
@ApplicationScoped
class YoursEstimate {

    /**
     * @param waits whether it may still be answered
     * @param accepted what a later yes has raised it to, before taxes, or empty
     */
    public record Sheet(
            UUID id,
            String label,
            String home,
            String words,
            String until,
            String deposit,
            List<Line> lines,
            List<Line> taxes,
            String total,
            boolean waits,
            String stands,
            String accepted,
            @Nullable More more) {}

    /** A question for a yes to more; amounts before taxes. */
    public record More(UUID id, String whole, String accepted, String words) {}

    public record Line(String quantity, String words, String why, String amount) {}

    @Inject
    Estimates estimates;

    @Inject
    AskingForMore asking;

    private static Optional<Money> raised(Estimate one) {
        Estimate.Offer offer = one.offer();
        return Optional.ofNullable(one.accepted())
                .filter(whole -> offer != null && whole.compareTo(offer.subtotal()) > 0);
    }

    Sheet of(Estimate one, Frame frame) {
        Locale locale = frame.locale();
        var sum = estimates.sum(one);
        var state = one.state(frame.today());
        return new Sheet(
                one.id(),
                one.label().orElseThrow(),
                one.home(),
                one.words(),
                frame.inWords(one.validUntil()),
                one.deposit() == null ? "" : one.deposit().format(locale),
                sum.lines().stream()
                        .map(line -> new Line(
                                Written.of(line.quantity(), locale),
                                line.words().in(locale),
                                line.why().in(locale),
                                line.net().format(locale)))
                        .toList(),
                sum.taxes().stream()
                        .map(tax -> new Line(
                                "", tax.label().in(locale), "", tax.amount().format(locale)))
                        .toList(),
                sum.total().format(locale),
                state == EstimateState.OFFERED,
                state.wording().in(locale),
                raised(one).map(whole -> whole.format(locale)).orElse(""),
                asking.open(one)
                        .map(asked -> new More(
                                asked.id(),
                                asked.whole().format(locale),
                                Objects.requireNonNull(one.accepted()).format(locale),
                                asked.words()))
                        .orElse(null));
    }
}
