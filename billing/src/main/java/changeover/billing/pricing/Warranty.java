package changeover.billing.pricing;

import changeover.contracts.words.Wording;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Who answers for a part before the plan and the price are asked.
 *
 * @param why said under the line; of nobody, why no longer, where somebody once did
 * @param labour said under the labour of a part that its maker gives, where we or the law answer for labour and trip; else null
 */
public record Warranty(
        By by, @Nullable Wording why, @Nullable Wording labour) {

    /** In the order in which they are asked. */
    public enum By {
        /** Gives the part; labour and trip are asked of us and of the law, else charged. */
        MAKER,
        /** We ourselves, for what we fitted: the part and its labour. */
        US,
        /** The law, from whoever sold the machine: the part and its labour. */
        LAW,
        /** The plan's own task asked for it, so no warranty is. */
        PLAN,
        NOBODY
    }

    public Warranty(By by, @Nullable Wording why) {
        this(by, why, null);
    }

    public static final Warranty NONE = new Warranty(By.NOBODY, null);

    public static final Warranty OF_THE_PLAN = new Warranty(By.PLAN, null);

    /** As whoever was there said, where no day is known. */
    public static final Warranty SAID = new Warranty(
            By.MAKER,
            new Wording("No charge: under the maker’s warranty.", "Sans frais : sous la garantie du fabricant."));

    /** The reason of one that covers. */
    Wording reason() {
        return Objects.requireNonNull(why);
    }

    /** What is said of a part that it does not cover. */
    Wording before(Wording charged) {
        return why == null ? charged : Reasons.both(why, charged);
    }

    boolean covers() {
        return by != By.NOBODY && by != By.PLAN;
    }

    /** Whether the labour that the part asks for costs nothing either. */
    boolean coversLabour() {
        return by == By.US || by == By.LAW || labour != null;
    }
}
