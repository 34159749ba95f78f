package changeover.billing.reminders;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The step that is due is the highest one whose day has come, once; steps that were passed over are not made up for, and none
 * follows another within the days that lie between them.
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
                .filter(step -> step.daysLate() <= daysLate && step.daysLate() > asked)
                .reduce((_, higher) -> higher)
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
