package changeover.billing.papers;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A paper of the business holds until its last day, and is spoken of so many days before it.
 *
 * @param kind licence, insurance, bond, ticket or other
 * @param person whose ticket it is, and what they are called; null for the business's own papers
 * @param remindDays how many days before its last day somebody is told
 * @param file whether a file is kept with it
 */
public record BusinessPaper(
        UUID id,
        String kind,
        String name,
        @Nullable String number,
        @Nullable UUID person,
        @Nullable String personName,
        @Nullable LocalDate expiresOn,
        int remindDays,
        boolean file) {

    /** The only kind that is somebody's. */
    static final String TICKET = "ticket";

    public static final List<String> KINDS = List.of("licence", "insurance", "bond", TICKET, "other");

    /** Whether it holds no more. */
    public boolean isOver(LocalDate day) {
        return expiresOn != null && expiresOn.isBefore(day);
    }

    /** Whether somebody must see to it: it is over, or will be soon. */
    public boolean isSpokenOf(LocalDate day) {
        return expiresOn != null && !day.isBefore(expiresOn.minusDays(remindDays));
    }
}
