package changeover.web.office;

import changeover.scheduling.returns.ReturnVisit;
import changeover.scheduling.returns.ReturnVisits;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** The free returns that a visit had, and the visit that it answers itself. */
@ApplicationScoped
public class ReturnsOfVisits {

    /**
     * @param visit where the line leads: the return, or from the return the visit that it answers
     * @param answers whether it leads to the visit that is answered
     * @param day of the visit it leads to; empty while it has none
     */
    public record Line(UUID visit, boolean answers, String day, String cause, String part, String words) {}

    @Inject
    ReturnVisits returns;

    List<Line> of(UUID visit, Frame frame) {
        return returns.ofVisit(visit).stream()
                .map(one -> line(one, one.visitId().equals(visit), frame))
                .toList();
    }

    private static Line line(ReturnVisit one, boolean answers, Frame frame) {
        LocalDate day = answers ? one.answeredOn() : one.day();
        return new Line(
                answers ? one.answersId() : one.visitId(),
                answers,
                day == null ? "" : frame.brief(day),
                one.cause().wording().in(frame.locale()),
                one.part() == null ? "" : one.part().in(frame.locale()),
                one.words());
    }
}
