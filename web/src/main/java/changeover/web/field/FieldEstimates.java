package changeover.web.field;

import changeover.billing.documents.Words;
import changeover.billing.estimates.Answering;
import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.EstimateLine;
import changeover.billing.estimates.EstimateState;
import changeover.billing.estimates.EstimateSum;
import changeover.billing.estimates.EstimateWorks;
import changeover.billing.estimates.Estimates;
import changeover.billing.invoices.DraftsByHand;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refusals;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.EstimateForm;
import changeover.web.session.FormRows;
import changeover.web.session.Frame;
import changeover.web.session.OwnVisits;
import changeover.web.session.Said;
import changeover.web.session.Written;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Writes the estimates of a visit as whoever stands in the home reads them, and reads them out. */
@ApplicationScoped
class FieldEstimates {

    /** @param label its number, empty for a draft; {@code total} with taxes, empty where a price or a tax is missing */
    public record Row(UUID id, String label, String words, String state, String until, String total) {}

    public record Line(String quantity, String words, String why, String net) {}

    public record Tax(String label, String amount) {}

    /**
     * One to be read out.
     *
     * @param state its code
     * @param notYet why it may not be offered as it stands, or empty
     * @param notHere why a yes is not signed here, or empty
     * @param accepted before taxes, or empty
     * @param here whether this visit does the work
     * @param mayBeHere whether it may: it is still to be kept, and asks nothing for it yet
     */
    public record Sheet(
            UUID id,
            UUID visit,
            String home,
            String customer,
            String label,
            String state,
            String stands,
            String words,
            String until,
            String deposit,
            List<Line> lines,
            List<Tax> taxes,
            String subtotal,
            String total,
            String notYet,
            String notHere,
            String accepted,
            boolean here,
            boolean mayBeHere) {}

    public record Choice(String code, String words) {}

    /** @param id null for a new one; {@code version} then stands for nothing */
    public record Writing(
            UUID visit,
            String home,
            @Nullable UUID id,
            int version,
            List<Choice> parts,
            List<Choice> units,
            List<FormRows.Row> partRows,
            List<FormRows.Row> otherRows) {}

    @Inject
    Estimates estimates;

    @Inject
    Answering answering;

    @Inject
    Parts parts;

    @Inject
    EstimateWorks works;

    @Inject
    OwnVisits visits;

    /** Nothing is estimated at a visit that was called off or that nobody kept. */
    VisitLists.Row visit(UUID id) {
        VisitLists.Row visit = visits.found(id);
        if (visit.how() != null && !visit.how().equals("closed")) {
            throw new NotFoundException();
        }
        return visit;
    }

    Estimate found(UUID visit, UUID id) {
        return estimates.ofVisit(visit(visit).id()).stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(NotFoundException::new);
    }

    List<Row> rows(UUID visit, Frame frame) {
        return estimates.ofVisit(visit).stream().map(one -> row(one, frame)).toList();
    }

    private static Row row(Estimate one, Frame frame) {
        Estimate.Offer offer = one.offer();
        return new Row(
                one.id(),
                one.label().orElse(""),
                one.words().lines().findFirst().orElse(""),
                one.state(frame.today()).wording().in(frame.locale()),
                frame.brief(one.validUntil()),
                offer == null ? "" : offer.total().format(frame.locale()));
    }

    Sheet sheet(Estimate one, VisitLists.Row visit, Frame frame) {
        EstimateSum sum = estimates.sum(one);
        EstimateState state = one.state(frame.today());
        return new Sheet(
                one.id(),
                visit.id(),
                home(visit),
                one.customer(),
                one.label().orElse(""),
                state.code(),
                state.wording().in(frame.locale()),
                one.words(),
                frame.inWords(one.validUntil()),
                format(one.deposit(), frame),
                sum.lines().stream().map(line -> line(line, frame)).toList(),
                sum.taxes().stream()
                        .map(tax -> new Tax(tax.label().in(frame.locale()), format(tax.amount(), frame)))
                        .toList(),
                format(sum.subtotal(), frame),
                format(sum.total(), frame),
                sum.refusal()
                        .map(refusal -> Refusals.sentence(refusal, frame.locale()))
                        .orElse(""),
                answering
                        .notOnTheSpot(one)
                        .map(refusal -> Refusals.sentence(refusal, frame.locale()))
                        .orElse(""),
                format(one.accepted(), frame),
                one.visits().contains(visit.id()),
                mayBeHere(one, visit));
    }

    boolean mayBeHere(Estimate one, VisitLists.Row visit) {
        return visit.how() == null
                && works.candidates(one).stream().anyMatch(other -> other.id().equals(visit.id()));
    }

    Writing writing(VisitLists.Row visit, @Nullable UUID id, int version, Said form, Frame frame) {
        Words paper = Words.in(frame.locale());
        return new Writing(
                visit.id(),
                home(visit),
                id,
                version,
                parts.all().stream()
                        .map(part -> new Choice(part.code(), part.name().in(frame.locale()) + ", " + part.code()))
                        .toList(),
                DraftsByHand.UNITS.stream()
                        .map(code -> new Choice(code, paper.unit(code)))
                        .toList(),
                EstimateForm.parts(form),
                EstimateForm.others(form));
    }

    private static Line line(EstimateLine line, Frame frame) {
        return new Line(
                quantity(line, frame),
                line.words().in(frame.locale()),
                line.why().in(frame.locale()),
                line.unitPrice() == null ? "" : format(line.net(), frame));
    }

    /** With its unit, but for pieces. */
    private static String quantity(EstimateLine line, Frame frame) {
        String figure = Written.of(line.quantity(), frame.locale());
        String unit = Words.in(frame.locale()).unit(line.unit());
        return unit.isEmpty() ? figure : figure + "\u00a0" + unit;
    }

    static String home(VisitLists.Row visit) {
        return visit.street() + ", " + visit.city();
    }

    private static String format(@Nullable Money money, Frame frame) {
        return money == null ? "" : money.format(frame.locale());
    }
}
