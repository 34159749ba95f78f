package changeover.billing.ledger;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One event of the books in double entry: what is debited is what is credited.
 *
 * @param document its number or the payment's reference; empty where nobody gave one
 * @param invoiceId the document, or null
 */
public record JournalEntry(
        LocalDate day,
        String document,
        Wording words,
        @Nullable UUID invoiceId,
        List<Posting> postings) {

    /**
     * @param role what is moved; the business's own account code stands beside it
     * @param amount debited when above nought, credited when below
     */
    public record Posting(String role, Money amount) {

        public Money debit() {
            return amount.aboveNought();
        }

        public Money credit() {
            return amount.negated().aboveNought();
        }
    }

    public JournalEntry {
        postings = List.copyOf(postings);
    }

    boolean balances() {
        return postings.stream().mapToLong(one -> one.amount().minor()).sum() == 0;
    }
}
