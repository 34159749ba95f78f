package changeover.web.api;

import changeover.billing.estimates.AnswersPutRight;
import changeover.billing.estimates.AskedMore;
import changeover.billing.estimates.ConsentChannel;
import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.EstimateFacts;
import changeover.billing.estimates.EstimateLine;
import changeover.billing.estimates.EstimateSum;
import changeover.billing.estimates.EstimateTax;
import changeover.billing.estimates.MoreRow;
import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An estimate as the API says it.
 *
 * @param state draft, offered, expired, accepted, refused or withdrawn
 * @param validUntil its last day, in
 * @param accepted the amount before taxes that the customer said yes to, with every later yes
 * @param question for a yes to more, while it waits
 * @param undone answers that do not count any more
 * @param visits in which the accepted work is done
 * @param work what it is, with the {@code form} that its price was agreed in: both decide the taxes
 * @param parts and {@code others}: what was asked for; {@code lines} and {@code taxes} are what it costs
 */
public record EstimateDocument(
        UUID id,
        String state,
        @Nullable String number,
        UUID home,
        UUID customer,
        @Nullable UUID call,
        @Nullable UUID visit,
        String words,
        int minutes,
        boolean trip,
        List<Part> parts,
        List<Other> others,
        LocalDate validUntil,
        @Nullable Amount deposit,
        String work,
        String form,
        @Nullable LocalDate offeredOn,
        List<Line> lines,
        List<Tax> taxes,
        Amount subtotal,
        Amount total,
        @Nullable Answer answer,
        @Nullable Amount accepted,
        List<More> more,
        @Nullable Question question,
        List<Undone> undone,
        List<UUID> visits) {

    /** @param total with taxes, as it was offered; null for a draft */
    public record Row(
            UUID id,
            String state,
            @Nullable String number,
            UUID home,
            String address,
            UUID customer,
            String words,
            LocalDate validUntil,
            boolean expiresSoon,
            @Nullable Amount total) {}

    public record Part(String code, BigDecimal quantity) {}

    public record Other(String words, BigDecimal quantity, String unit, Amount unitPrice, String work) {}

    /** @param unitPrice null while the price book has none */
    public record Line(
            String kind,
            String words,
            String why,
            BigDecimal quantity,
            String unit,
            @Nullable Amount unitPrice,
            Amount discount,
            Amount net) {}

    public record Tax(String code, String words, Amount base, Amount amount) {}

    /** @param channel link, call or site; null where the business took it back */
    public record Answer(
            String how,
            String by,
            Instant at,
            @Nullable String channel,
            @Nullable String words) {}

    /** A question for more that waits for the customer's answer on their own page. */
    public record Question(Amount whole, String words, LocalDate day) {}

    /** An answer that was taken back. */
    public record Undone(String how, String by, Instant at, String why, String undoneBy, Instant undoneAt) {}

    public record More(Amount whole, String by, Instant at, String channel, String words) {}

    /** What was said after the offer, beside the answer that counts. */
    record Answers(List<MoreRow> more, Optional<AskedMore> question, List<AnswersPutRight.Undone> undone) {}

    static Row row(Estimate one, LocalDate today) {
        Estimate.Offer offer = one.offer();
        return new Row(
                one.id(),
                one.state(today).code(),
                one.label().orElse(null),
                one.homeId(),
                one.home(),
                one.customerId(),
                one.words(),
                one.validUntil(),
                one.expiresSoon(today),
                offer == null ? null : Amount.of(offer.total()));
    }

    static EstimateDocument of(Estimate one, EstimateFacts facts, EstimateSum sum, Answers answers, LocalDate today) {
        Locale language = Locale.of(one.language());
        Estimate.Offer offer = one.offer();
        return new EstimateDocument(
                one.id(),
                one.state(today).code(),
                one.label().orElse(null),
                one.homeId(),
                one.customerId(),
                one.origin().callId(),
                one.origin().visitId(),
                one.words(),
                one.minutes(),
                one.trip(),
                facts.parts().stream()
                        .map(part -> new Part(part.code(), part.quantity().stripTrailingZeros()))
                        .toList(),
                facts.others().stream().map(EstimateDocument::other).toList(),
                one.validUntil(),
                amount(one.deposit()),
                facts.work().code(),
                facts.form().code(),
                offer == null ? null : offer.day(),
                sum.lines().stream().map(line -> line(line, language)).toList(),
                sum.taxes().stream().map(tax -> tax(tax, language)).toList(),
                Amount.of(sum.subtotal()),
                Amount.of(sum.total()),
                answer(one.answer()),
                amount(one.accepted()),
                answers.more().stream()
                        .map(row -> new More(
                                Amount.of(row.whole()),
                                row.byName(),
                                row.at(),
                                row.channel().code(),
                                row.words()))
                        .toList(),
                answers.question()
                        .map(asked -> new Question(Amount.of(asked.whole()), asked.words(), asked.day()))
                        .orElse(null),
                answers.undone().stream()
                        .map(was -> new Undone(
                                was.how(), was.byName(), was.at(), was.why(), was.undoneBy(), was.undoneAt()))
                        .toList(),
                one.visits());
    }

    private static Other other(EstimateFacts.OtherItem other) {
        return new Other(
                other.words(),
                other.quantity().stripTrailingZeros(),
                other.unit(),
                Amount.of(other.unitPrice()),
                other.work().code());
    }

    private static Line line(EstimateLine line, Locale language) {
        return new Line(
                line.kind(),
                line.words().in(language),
                line.why().in(language),
                line.quantity().stripTrailingZeros(),
                line.unit(),
                amount(line.unitPrice()),
                Amount.of(line.discount()),
                Amount.of(line.net()));
    }

    private static Tax tax(EstimateTax tax, Locale language) {
        return new Tax(tax.code(), tax.label().in(language), Amount.of(tax.base()), Amount.of(tax.amount()));
    }

    private static @Nullable Answer answer(Estimate.@Nullable Answer answer) {
        if (answer == null) {
            return null;
        }
        ConsentChannel channel = answer.channel();
        return new Answer(
                answer.how(), answer.byName(), answer.at(), channel == null ? null : channel.code(), answer.words());
    }

    private static @Nullable Amount amount(@Nullable Money money) {
        return money == null ? null : Amount.of(money);
    }
}
