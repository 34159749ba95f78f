package changeover.web.field;

import changeover.contracts.catalogue.Caution;
import java.util.List;
import java.util.UUID;

/**
 * One task as it is done, one a screen.
 *
 * @param next the next task's words; empty when closing is next
 * @param weather whether its readings need warm air outdoors
 * @param ticket the ticket that the task asks for and the technician does not hold; empty when all is well
 */
public record TaskView(
        UUID visit,
        String home,
        UUID id,
        int number,
        List<VisitView.Line> steps,
        String machine,
        String words,
        String reason,
        String ticket,
        List<Warning> cautions,
        List<ReadingView> readings,
        List<Choice> sentences,
        List<Kept> findings,
        List<Choice> parts,
        int photos,
        List<Kept> taken,
        String next,
        boolean weather,
        boolean closed) {

    /** @param icon which of the drawn signs stands beside it */
    public record Warning(String icon, String title, String words) {

        static Warning of(Caution caution, java.util.Locale locale) {
            String icon = switch (caution.code()) {
                case "electrical" -> "lightning";
                case "co", "gas-smell", "a2l", "refrigerant", "leak-search", "hot" -> "flame";
                case "water", "chemicals", "relief-valve", "mould", "outdoor-ice" -> "drop";
                default -> "urgent";
            };
            return new Warning(
                    icon, caution.title().in(locale), caution.wording().in(locale));
        }
    }

    /** Something to choose, and how it reads. */
    public record Choice(String code, String words) {}

    /** Something said earlier on this sheet that may be taken back. */
    public record Kept(UUID operation, String level, String words) {}
}
