package changeover.web.office;

import changeover.contracts.calendar.Window;
import changeover.scheduling.dayplan.standing.WordKept;
import changeover.scheduling.dayplan.standing.WordsKept;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** How the business kept its word up to today, as the season's page says it. */
@ApplicationScoped
public class WordInWords {

    private static final int SHOWN = 20;

    /** @param kept of {@code all}, how many were made as was said */
    public record View(
            String from, String until, int kept, int all, int percent, WordKept counts, List<Line> notKept) {}

    public record Line(UUID visit, UUID homeId, String home, String day, String why, String by) {}

    @Inject
    WordsKept words;

    View of(LocalDate first, Frame frame) {
        Window days = Window.ofDays(first, frame.today());
        WordKept counts = words.over(days);
        return new View(
                frame.inWords(first),
                frame.inWords(frame.today()),
                Math.max(0, counts.judged() - counts.againstUs()),
                counts.judged(),
                counts.percent(),
                counts,
                words.notKept(days, SHOWN).stream()
                        .map(one -> new Line(
                                one.visit(),
                                one.homeId(),
                                one.home(),
                                frame.brief(one.day()),
                                one.why() == null ? "" : one.why(),
                                one.by() == null ? "" : one.by()))
                        .toList());
    }
}
