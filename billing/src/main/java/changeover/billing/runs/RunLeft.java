package changeover.billing.runs;

import changeover.contracts.words.Wording;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A draft that a run left as it was, and why.
 *
 * @param customer none when the draft is gone since
 */
public record RunLeft(UUID draft, @Nullable String customer, String code, Wording why) {}
