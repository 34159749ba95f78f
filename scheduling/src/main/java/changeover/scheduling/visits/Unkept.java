package changeover.scheduling.visits;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.LongestVisit;
import changeover.contracts.words.Wording;
import java.util.List;

/** A promise that the sold visits cannot keep, said by name instead of being forgotten. */
public record Unkept(Promise promise, Wording why) {

    private static final Wording ONE_MORE = new Wording(
            "It would take one more visit than the plan sells, between %s and %s.",
            "Il faudrait une visite de plus que la formule n’en vend, entre le %s et le %s.");

    private static final Wording NO_ROOM = new Wording(
            "Its %d\u00a0minutes do not fit into the visits between %s and %s, of %d\u00a0minutes at most; it would take"
                    + " one more visit than the plan sells.",
            "Ses %d\u00a0minutes n’entrent pas dans les visites entre le %s et le %s, de %d\u00a0minutes au plus; il"
                    + " faudrait une visite de plus que la formule n’en vend.");

    static List<Unkept> of(List<Owed> left, List<VisitDraft> visits, LongestVisit longest) {
        return left.stream()
                .map(task -> new Unkept(task.promise(), why(task, visits, longest)))
                .toList();
    }

    private static Wording why(Owed task, List<VisitDraft> visits, LongestVisit longest) {
        Window window = task.window();
        Wording from = DayInWords.of(window.from());
        Wording last = DayInWords.of(window.last());
        boolean full = longest.isBounded()
                && visits.stream()
                        .anyMatch(visit -> visit.takesMore() && visit.window().meets(window));
        return full
                ? new Wording(
                        NO_ROOM.en().formatted(task.minutes(), from.en(), last.en(), longest.minutes()),
                        NO_ROOM.fr().formatted(task.minutes(), from.fr(), last.fr(), longest.minutes()))
                : new Wording(
                        ONE_MORE.en().formatted(from.en(), last.en()),
                        ONE_MORE.fr().formatted(from.fr(), last.fr()));
    }
}
