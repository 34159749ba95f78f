package changeover.scheduling.calls;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;

/**
 * A caller is promised an answer within hours that depend on the urgency, and sooner with a plan than without. What the
 * business has not written itself is a house rule of ours.
 */
public record AnswerHours(Map<Asked, Integer> own) {

    public record Asked(Urgency urgency, boolean withPlan) {

        /** The name of its field wherever it is typed. */
        public String code() {
            return urgency.code() + (withPlan ? "-plan" : "-none");
        }
    }

    /** The longest answer time, in hours: thirty days. */
    public static final int MOST = 720;

    private static final Map<Asked, Integer> USUAL = Map.of(
            new Asked(Urgency.LIFE, true), 2,
            new Asked(Urgency.LIFE, false), 4,
            new Asked(Urgency.URGENT, true), 4,
            new Asked(Urgency.URGENT, false), 12,
            new Asked(Urgency.SOON, true), 24,
            new Asked(Urgency.SOON, false), 48,
            new Asked(Urgency.ORDINARY, true), 72,
            new Asked(Urgency.ORDINARY, false), 168);

    public AnswerHours {
        own = Map.copyOf(own);
    }

    public int of(Urgency urgency, boolean withPlan) {
        Asked asked = new Asked(urgency, withPlan);
        return own.getOrDefault(asked, USUAL.getOrDefault(asked, MOST));
    }

    /** By when we are there: hours of the clock, also through the night and over a change of the clock. */
    public Instant promise(Instant rangAt, Urgency urgency, boolean withPlan) {
        return rangAt.plus(Duration.ofHours(of(urgency, withPlan)));
    }
}
