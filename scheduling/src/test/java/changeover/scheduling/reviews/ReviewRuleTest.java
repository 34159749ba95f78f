package changeover.scheduling.reviews;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.words.Refusal;
import changeover.scheduling.reviews.ReviewRule.Closed;
import java.time.LocalDate;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Which closures wait. */
class ReviewRuleTest {

    private static final UUID IDA = new UUID(7, 7);
    private static final UUID RUFUS = new UUID(7, 8);
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private static Closed by(UUID technician, @Nullable UUID second, @Nullable FindingLevel gravest, int ordinal) {
        return new Closed(technician, second, gravest, ordinal, DAY);
    }

    private static void check(boolean expected, ReviewRule rule, Closed closed) {
        assertEquals(expected, rule.holds(closed), rule + " " + closed);
    }

    private static ReviewRule rule(ReviewKind kind, @Nullable UUID person, @Nullable FindingLevel level, int first) {
        return new ReviewRule(kind, person, level, first, DAY);
    }

    @Test
    void all_of_one_technician() {
        ReviewRule rule = rule(ReviewKind.TECHNICIAN, IDA, null, 0);
        check(true, rule, by(IDA, null, null, 99));
        check(false, rule, by(RUFUS, IDA, FindingLevel.URGENT, 1));
        check(false, rule, new Closed(IDA, null, null, 1, DAY.minusDays(1)));
    }

    @Test
    void from_a_gravity_on() {
        ReviewRule rule = rule(ReviewKind.SEVERITY, null, FindingLevel.URGENT, 0);
        check(false, rule, by(IDA, null, null, 1));
        check(false, rule, by(IDA, null, FindingLevel.RECOMMENDED, 1));
        check(true, rule, by(IDA, null, FindingLevel.URGENT, 1));
        check(true, rule, by(RUFUS, null, FindingLevel.DO_NOT_USE, 1));
        check(false, rule(ReviewKind.SEVERITY, IDA, FindingLevel.URGENT, 0), by(RUFUS, null, FindingLevel.URGENT, 1));
    }

    @Test
    void the_first_of_somebody_new() {
        ReviewRule rule = rule(ReviewKind.FIRST, null, null, 3);
        check(true, rule, by(IDA, null, null, 3));
        check(false, rule, by(IDA, null, null, 4));
        check(false, rule(ReviewKind.FIRST, IDA, null, 3), by(RUFUS, null, null, 1));
    }

    @Test
    void somebody_learns_beside_another() {
        ReviewRule anybody = rule(ReviewKind.BESIDE, null, null, 0);
        ReviewRule rufus = rule(ReviewKind.BESIDE, RUFUS, null, 0);
        check(false, anybody, by(RUFUS, null, null, 1));
        check(true, anybody, by(IDA, RUFUS, null, 1));
        check(true, rufus, by(RUFUS, IDA, null, 1));
        check(true, rufus, by(IDA, RUFUS, null, 1));
        check(false, rufus, by(IDA, new UUID(7, 9), null, 1));
    }

    private static void lacks(String expected, ReviewRule rule) {
        assertEquals(expected, rule.refusals().stream().map(Refusal::code).collect(Collectors.joining(" ")));
    }

    @Test
    void a_rule_says_what_it_holds() {
        lacks("review.whose", rule(ReviewKind.TECHNICIAN, null, null, 0));
        lacks("review.how-grave", rule(ReviewKind.SEVERITY, null, null, 0));
        lacks("review.how-grave", rule(ReviewKind.SEVERITY, null, FindingLevel.INFORMATION, 0));
        lacks("review.how-many", rule(ReviewKind.FIRST, null, null, 0));
        lacks("review.how-many", rule(ReviewKind.FIRST, null, null, 501));
        lacks("", rule(ReviewKind.BESIDE, null, null, 0));
    }
}
