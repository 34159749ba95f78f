package changeover.scheduling.visits;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.LongestVisit;
import changeover.contracts.customers.ShutTimes;
import changeover.contracts.words.Wording;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A visit keeps all its promises on any day of its window, and is only as long as their work.
 *
 * @param pinned the visit it stands for when that one has its day already; null for a new one
 * @param tasks empty only where the plan sells a visit for which nothing is promised; of one that has its day, with what
 *     it held before
 * @param longest how long it might be
 */
public record PlannedVisit(@Nullable UUID pinned, Window window, List<Promise> tasks, LongestVisit longest) {

    /** Why there is a visit that nothing asks for. */
    static final Wording NOTHING_ELSE = new Wording(
            "Your plan gives this visit; nothing else falls due at it.",
            "Votre formule comprend cette visite; rien d’autre n’y est prévu.");

    private static final Wording KEEPS = new Wording(
            "It keeps %d of the year’s promises, on any day from %s to %s.",
            "Elle tient %d des promesses de l’année, n’importe quel jour du %s au %s.");

    private static final Wording ON_ITS_DAY = new Wording(
            "It has its day, %s, and keeps %d of the year’s promises.",
            "Elle a déjà son jour, le %s, et tient %d des promesses de l’année.");

    private static final Wording LONGER = new Wording(
            "This task takes %d\u00a0minutes, more than the %d that a visit may last: it has a visit of its own.",
            "Cette tâche prend %d\u00a0minutes et une visite n’en dure que %d au plus\u00a0: elle a sa propre visite.");

    public PlannedVisit {
        tasks = List.copyOf(tasks);
    }

    public Optional<UUID> pinnedVisit() {
        return Optional.ofNullable(pinned);
    }

    /** In the longest run of days on which the home is open, if there is any; one that has its day keeps it. */
    PlannedVisit whileOpen(ShutTimes shut) {
        return pinned != null || shut.isNever()
                ? this
                : new PlannedVisit(null, shut.longestOpen(window).orElse(window), tasks, longest);
    }

    /** Planning minutes on site. */
    public int minutes() {
        return tasks.stream().mapToInt(Promise::minutes).sum();
    }

    /** Why it exists and when it may be; each of its tasks says the rest. */
    public Wording why() {
        Wording first = DayInWords.of(window.from());
        Wording last = DayInWords.of(window.last());
        if (pinned != null) {
            return new Wording(
                    ON_ITS_DAY.en().formatted(first.en(), tasks.size()),
                    ON_ITS_DAY.fr().formatted(first.fr(), tasks.size()));
        }
        return tasks.isEmpty()
                ? NOTHING_ELSE
                : new Wording(
                        KEEPS.en().formatted(tasks.size(), first.en(), last.en()),
                        KEEPS.fr().formatted(tasks.size(), first.fr(), last.fr()));
    }

    /** Said where the one task of the visit is longer than a visit may be. */
    public Optional<Wording> longer() {
        return tasks.size() == 1 && minutes() > longest.minutes()
                ? Optional.of(new Wording(
                        LONGER.en().formatted(minutes(), longest.minutes()),
                        LONGER.fr().formatted(minutes(), longest.minutes())))
                : Optional.empty();
    }
}
