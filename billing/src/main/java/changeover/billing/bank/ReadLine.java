package changeover.billing.bank;

import changeover.billing.payments.Way;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A line as a bank's file says it.
 *
 * @param key what makes two lines of one bank the same one, whatever file they come in
 * @param amount above nought what came in, below what went out
 * @param words everything the bank says about it
 * @param way how the money changed hands, where the bank says so
 */
public record ReadLine(
        String key,
        LocalDate day,
        BigDecimal amount,
        String words,
        @Nullable String reference,
        @Nullable Way way) {

    /** The same under another key. */
    ReadLine as(String other) {
        return new ReadLine(other, day, amount, words, reference, way);
    }
}
