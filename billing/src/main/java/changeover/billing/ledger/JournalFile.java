package changeover.billing.ledger;

import changeover.contracts.money.Money;
import changeover.contracts.words.CsvTable;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The journal as a table for the accountant: one row a posting, the postings of an entry bear its number. */
public final class JournalFile {

    private JournalFile() {}

    /** @param codes the business's own account codes by role; a role without one has an empty cell */
    public static byte[] of(List<JournalEntry> entries, Map<String, String> codes, Locale locale) {
        CsvTable table =
                new CsvTable("date", "entry", "document", "role", "account", "debit", "credit", "currency", "words");
        int number = 0;
        for (JournalEntry entry : entries) {
            number++;
            for (JournalEntry.Posting one : entry.postings()) {
                table.row(
                        entry.day(),
                        number,
                        entry.document(),
                        one.role(),
                        codes.getOrDefault(one.role(), ""),
                        some(one.debit()),
                        some(one.credit()),
                        one.amount().currency().getCurrencyCode(),
                        entry.words().in(locale));
            }
        }
        return table.bytes();
    }

    private static @Nullable BigDecimal some(Money amount) {
        return amount.isZero() ? null : amount.amount();
    }
}
