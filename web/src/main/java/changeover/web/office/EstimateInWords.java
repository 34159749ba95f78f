package changeover.web.office;

import changeover.billing.estimates.ConsentChannel;
import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.EstimateLine;
import changeover.billing.estimates.EstimateMoney;
import changeover.billing.estimates.EstimateState;
import changeover.billing.estimates.EstimateSum;
import changeover.billing.estimates.Estimates;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Refusals;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Frame;
import changeover.web.session.Written;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One estimate in words: its lines, its answer, and the work and the money that follow a yes. */
@ApplicationScoped
class EstimateInWords {

    /**
     * @param label its number, empty for a draft
     * @param state its code, for what may be done with it
     * @param stands in words
     * @param notYet why it may not be offered as it stands, or empty
     * @param accepted before taxes, or empty
     */
    public record Sheet(
            UUID id,
            String label,
            String state,
            String stands,
            UUID homeId,
            String home,
            UUID customerId,
            String customer,
            @Nullable UUID callId,
            @Nullable UUID visitId,
            String words,
            String offered,
            String until,
            boolean soon,
            String deposit,
            List<Line> lines,
            List<Tax> taxes,
            String subtotal,
            String total,
            String notYet,
            Answer answer,
            String accepted,
            List<Trip> trips,
            List<Charged> charged,
            List<AfterOfferInWords.More> more,
            List<AfterOfferInWords.Question> questions,
            List<AfterOfferInWords.Undone> undone,
            List<Kept> deposits) {}

    public record Line(String quantity, String words, String why, String price, String discount, String net) {}

    public record Tax(String label, String number, String amount) {}

    /** @param who empty while there is none */
    public record Answer(String who, String when, String how, String words) {}

    public record Trip(UUID id, String words) {}

    /** @param beyond by how much the draft goes beyond what was accepted, or empty */
    public record Charged(UUID invoiceId, String asked, String left, String beyond) {}

    /** @param left empty when nothing is kept any more */
    public record Kept(UUID id, long number, String day, String amount, String left) {}

    @Inject
    Estimates estimates;

    @Inject
    EstimateMoney money;

    @Inject
    AfterOfferInWords afterOffer;

    @Inject
    VisitLists visits;

    @Inject
    Businesses businesses;

    Sheet of(Estimate one, Frame frame) {
        EstimateSum sum = estimates.sum(one);
        EstimateState state = one.state(frame.today());
        Estimate.Offer offer = one.offer();
        return new Sheet(
                one.id(),
                one.label().orElse(""),
                state.code(),
                state.wording().in(frame.locale()),
                one.homeId(),
                one.home(),
                one.customerId(),
                one.customer(),
                one.origin().callId(),
                one.origin().visitId(),
                one.words(),
                offer == null ? "" : frame.inWords(offer.day()),
                frame.inWords(one.validUntil()),
                one.expiresSoon(frame.today()),
                format(one.deposit(), frame),
                sum.lines().stream().map(line -> line(line, frame)).toList(),
                sum.taxes().stream()
                        .map(tax -> new Tax(
                                tax.label().in(frame.locale()),
                                tax.registration() == null ? "" : tax.registration(),
                                format(tax.amount(), frame)))
                        .toList(),
                format(sum.subtotal(), frame),
                format(sum.total(), frame),
                sum.refusal()
                        .map(refusal -> Refusals.sentence(refusal, frame.locale()))
                        .orElse(""),
                answer(one.answer(), frame),
                format(one.accepted(), frame),
                one.visits().stream()
                        .flatMap(visit -> visits.one(visit).stream())
                        .map(row -> new Trip(row.id(), trip(row, frame)))
                        .toList(),
                charged(one, frame),
                afterOffer.more(one, frame),
                afterOffer.questions(one, frame),
                afterOffer.undone(one, frame),
                kept(one, frame));
    }

    private static Line line(EstimateLine line, Frame frame) {
        return new Line(
                Written.of(line.quantity(), frame.locale()),
                line.words().in(frame.locale()),
                line.why().in(frame.locale()),
                line.included() ? "" : format(line.unitPrice(), frame),
                line.discount().isZero() ? "" : format(line.discount(), frame),
                line.unitPrice() == null ? "" : format(line.net(), frame));
    }

    private Answer answer(Estimate.@Nullable Answer answer, Frame frame) {
        return answer == null
                ? new Answer("", "", "", "")
                : new Answer(
                        answer.byName(),
                        at(answer.at(), frame),
                        answer.channel() == null ? "" : how(answer.channel(), frame),
                        answer.words() == null ? "" : answer.words());
    }

    private static String trip(VisitLists.Row row, Frame frame) {
        if (row.day() == null) {
            return frame.brief(row.first()) + " – " + frame.brief(row.last());
        }
        return frame.brief(row.day()) + (row.technician() == null ? "" : ", " + row.technician());
    }

    private List<Charged> charged(Estimate one, Frame frame) {
        return money.drafts(one).stream()
                .map(draft -> new Charged(
                        draft.invoiceId(),
                        format(draft.asked(), frame),
                        format(draft.left(), frame),
                        format(draft.beyond().orElse(null), frame)))
                .toList();
    }

    private List<Kept> kept(Estimate one, Frame frame) {
        return money.deposits(one).stream()
                .map(row -> new Kept(
                        row.id(),
                        row.number(),
                        frame.brief(row.day()),
                        format(row.amount(), frame),
                        row.left().isPositive() ? format(row.left(), frame) : ""))
                .toList();
    }

    private String at(Instant at, Frame frame) {
        ZoneId zone = businesses.current().zone();
        return CallRows.inWords(at, frame, zone);
    }

    private static String how(ConsentChannel channel, Frame frame) {
        return channel.wording().in(frame.locale());
    }

    private static String format(@Nullable Money money, Frame frame) {
        return money == null ? "" : money.format(frame.locale());
    }
}
