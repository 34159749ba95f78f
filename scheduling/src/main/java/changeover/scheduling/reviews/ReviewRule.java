package changeover.scheduling.reviews;

import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.words.Refusal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A closure waits for a review: of one technician, from a gravity on, the first so many of each technician, or of whoever learns
 * beside another; each of one person's only, where the rule names one.
 *
 * @param person whose closures; null for everybody's
 * @param level for severity: this one and all that are graver
 * @param first for the first ones: how many
 * @param from first day, in
 */
public record ReviewRule(
        ReviewKind kind, @Nullable UUID person, @Nullable FindingLevel level, int first, LocalDate from) {

    public static final int MOST = 500;

    /**
     * A closure as a rule looks at it.
     *
     * @param second who went along; null for nobody
     * @param gravest of its findings; null where nothing was found
     * @param ordinal the how manieth of its technician in the business, from one on
     */
    public record Closed(
            UUID technician,
            @Nullable UUID second,
            @Nullable FindingLevel gravest,
            int ordinal,
            LocalDate day) {}

    public boolean holds(Closed closed) {
        return !closed.day().isBefore(from)
                && switch (kind) {
                    case TECHNICIAN -> closed.technician().equals(person);
                    case SEVERITY ->
                        level != null
                                && closed.gravest() != null
                                && isOf(closed)
                                && closed.gravest().compareTo(level) >= 0;
                    case FIRST -> closed.ordinal() <= first && isOf(closed);
                    case BESIDE ->
                        closed.second() != null
                                && (person == null
                                        || closed.technician().equals(person)
                                        || closed.second().equals(person));
                };
    }

    private boolean isOf(Closed closed) {
        return person == null || closed.technician().equals(person);
    }

    /** What the rule lacks to say anything. */
    public List<Refusal> refusals() {
        List<Refusal> missing = new ArrayList<>();
        if (kind == ReviewKind.TECHNICIAN && person == null) {
            missing.add(Refusal.of("review.whose").at("person"));
        }
        if (kind == ReviewKind.SEVERITY && (level == null || level == FindingLevel.INFORMATION)) {
            missing.add(Refusal.of("review.how-grave").at("level"));
        }
        if (kind == ReviewKind.FIRST && (first < 1 || first > MOST)) {
            missing.add(Refusal.of("review.how-many").at("first"));
        }
        return missing;
    }
}
