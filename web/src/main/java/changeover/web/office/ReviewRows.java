package changeover.web.office;

import changeover.scheduling.reviews.HeldClosure;
import changeover.scheduling.reviews.Reviews;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Closures that wait, or waited, in a line. */
@ApplicationScoped
public class ReviewRows {

    /**
     * @param level code of the gravest finding, or empty
     * @param why technician, severity, first or beside
     * @param lookedBy empty while it waits
     */
    public record Line(
            UUID id,
            UUID visit,
            UUID homeId,
            String home,
            String technician,
            String day,
            int version,
            int minutes,
            int planned,
            String level,
            String why,
            String lookedBy,
            String lookedOn,
            String words) {}

    @Inject
    Reviews reviews;

    List<Line> waiting(Frame frame) {
        return lines(reviews.waiting(), frame);
    }

    @Nullable
    Line ofVisit(UUID visit, Frame frame) {
        return reviews.ofVisit(visit).map(held -> line(held, frame)).orElse(null);
    }

    static List<Line> lines(List<HeldClosure> all, Frame frame) {
        return all.stream().map(held -> line(held, frame)).toList();
    }

    static Line line(HeldClosure held, Frame frame) {
        HeldClosure.Answer answer = held.answer();
        return new Line(
                held.id(),
                held.visitId(),
                held.homeId(),
                held.home(),
                held.technician(),
                frame.brief(held.day()),
                held.version(),
                held.minutes(),
                held.minutesPlanned(),
                held.gravest() == null ? "" : held.gravest(),
                held.why().code(),
                answer == null ? "" : answer.person(),
                answer == null ? "" : frame.brief(answer.day()),
                answer == null || answer.words() == null ? "" : answer.words());
    }
}
