package changeover.billing.reminders;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Every ladder begins with its first step, however late the document is, since a later letter speaks of an earlier one. Each step
 * is due once, and none follows another within the days that lie between them.
 */
public record Ladder(List<Step> steps) {

    public Ladder {
        steps = steps.stream().sorted(Comparator.comparingInt(Step::daysLate)).toList();
    }

    /**
     * @param daysLate days since the day of payment
     * @param asked the days of the highest step that was asked before, or nought
     * @param daysSinceAsked days since then
     */
    public Optional<Step> due(long daysLate, int asked, long daysSinceAsked) {
        return steps.stream()
                .filter(step -> step.daysLate() > asked)
                .findFirst()
                .filter(step -> step.daysLate() <= daysLate)
                .filter(step -> asked == 0 || daysSinceAsked >= gap(asked));
    }

    /** Somebody who got a late letter is not sent the next one before the days that the ladder leaves between the two. */
    private int gap(int asked) {
        return steps.stream()
                .filter(step -> step.daysLate() > asked)
                .mapToInt(step -> step.daysLate() - asked)
                .findFirst()
                .orElse(0);
    }
}
