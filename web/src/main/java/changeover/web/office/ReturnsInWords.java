package changeover.web.office;

import changeover.scheduling.orders.PartReturn;
import changeover.scheduling.orders.PartReturns;
import changeover.web.session.Frame;
import changeover.web.session.Written;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;

/** What went back, and what the supplier said to it, in a line. */
@ApplicationScoped
public class ReturnsInWords {

    /**
     * @param to a place of ours; empty for the supplier
     * @param credit what was expected, or empty
     * @param open whether the supplier still owes an answer
     * @param answer when the supplier answered; empty while it has not
     * @param amount what was credited; empty where it was refused
     */
    public record Line(
            UUID id,
            UUID orderId,
            UUID homeId,
            String home,
            String part,
            String quantity,
            String supplier,
            String from,
            String to,
            String day,
            String why,
            String words,
            String credit,
            boolean open,
            String answer,
            String amount,
            String answerWords) {}

    @Inject
    PartReturns returns;

    List<Line> open(Frame frame) {
        return returns.open().stream().map(one -> line(one, frame)).toList();
    }

    Line line(PartReturn one, Frame frame) {
        PartReturn.Answer answer = one.answer();
        return new Line(
                one.id(),
                one.orderId(),
                one.homeId(),
                one.home(),
                one.part().in(frame.locale()),
                Written.of(one.quantity(), frame.locale()),
                one.supplier(),
                one.from(),
                one.to() == null ? "" : one.to(),
                frame.brief(one.day()),
                one.why().wording().in(frame.locale()),
                one.words() == null ? "" : one.words(),
                one.credit() == null ? "" : one.credit().format(frame.locale()),
                one.isOpen(),
                answer == null ? "" : frame.brief(answer.day()),
                answer == null || answer.amount() == null ? "" : answer.amount().format(frame.locale()),
                answer == null || answer.words() == null ? "" : answer.words());
    }
}
