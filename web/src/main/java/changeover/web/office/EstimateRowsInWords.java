package changeover.web.office;

import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.EstimateMoney;
import changeover.billing.estimates.EstimateState;
import changeover.billing.estimates.Estimates;
import changeover.contracts.money.Money;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;

/** Estimates in a line each, wherever they are listed. */
@ApplicationScoped
public class EstimateRowsInWords {

    @Inject
    Estimates estimates;

    @Inject
    EstimateMoney money;

    /**
     * An estimate in a line.
     *
     * @param label its number, empty for a draft
     * @param state in words
     * @param accepted whether the customer said yes
     * @param soon whether it waits for its answer and has a week or less
     * @param total with taxes, as it was offered; empty for a draft
     */
    public record Line(
            UUID id,
            String label,
            UUID homeId,
            String home,
            String customer,
            String words,
            String state,
            boolean accepted,
            boolean open,
            boolean soon,
            String until,
            String total) {}

    List<Line> open(Frame frame) {
        return lines(estimates.open(), frame);
    }

    List<Line> toDo(Frame frame) {
        return lines(estimates.toDo(), frame);
    }

    List<Line> over(Frame frame, int skip, int count) {
        return lines(estimates.over(skip, count), frame);
    }

    List<Line> ofHome(Frame frame, UUID home) {
        return lines(estimates.ofHome(home), frame);
    }

    List<Line> ofCustomer(Frame frame, UUID customer) {
        return lines(estimates.ofCustomer(customer), frame);
    }

    List<Line> ofCall(Frame frame, UUID call) {
        return lines(estimates.ofCall(call), frame);
    }

    /** @param beyond by how much the visit's draft goes beyond what was accepted for it; empty where it does not */
    record OfVisit(List<Line> lines, String beyond) {}

    OfVisit ofVisit(Frame frame, UUID visit) {
        List<Estimate> all = estimates.ofVisit(visit);
        return new OfVisit(lines(all, frame), beyond(all, frame, visit));
    }

    private String beyond(List<Estimate> all, Frame frame, UUID visit) {
        return all.stream()
                .filter(one -> one.visits().contains(visit))
                .flatMap(one -> money.drafts(one).stream())
                .filter(draft -> draft.visitId().equals(visit))
                .flatMap(draft -> draft.beyond().stream())
                .findFirst()
                .map(amount -> amount.format(frame.locale()))
                .orElse("");
    }

    private static List<Line> lines(List<Estimate> all, Frame frame) {
        return all.stream().map(one -> line(one, frame)).toList();
    }

    private static Line line(Estimate one, Frame frame) {
        EstimateState state = one.state(frame.today());
        Estimate.Offer offer = one.offer();
        Money total = offer == null ? null : offer.total();
        return new Line(
                one.id(),
                one.label().orElse(""),
                one.homeId(),
                one.home(),
                one.customer(),
                one.words().lines().findFirst().orElse(""),
                state.wording().in(frame.locale()),
                state == EstimateState.ACCEPTED,
                state.isOpen(),
                one.expiresSoon(frame.today()),
                frame.brief(one.validUntil()),
                total == null ? "" : total.format(frame.locale()));
    }
}
