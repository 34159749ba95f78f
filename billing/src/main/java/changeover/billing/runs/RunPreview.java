package changeover.billing.runs;

import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a run on a day would issue, and what is odd about it.
 *
 * @param drafts how many would be issued
 * @param totals of those, tax included, a currency each
 * @param refused drafts that would stay as they are, and why
 * @param withoutMail drafts that would be issued and whose payer gets a letter, for want of an e-mail address
 */
public record RunPreview(LocalDate day, int drafts, List<Money> totals, List<Odd> refused, List<Odd> withoutMail) {

    /** @param why none for a draft that is only without an address */
    public record Odd(
            UUID draft,
            UUID customerId,
            String customer,
            @Nullable Refusal why) {}
}
