package changeover.billing.writeoffs;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What was given up of a document on a day, or, below nought, taken back since.
 *
 * @param amount taxes in
 * @param why in the person's words; null where money or a credit note took it back
 * @param by the person; null where nobody was signed in
 * @param because what took it back: a payment came, a credit note was issued; null for a person's own act
 * @param left what of it still stands; nought on what is taken back
 */
public record WriteOff(
        UUID id,
        UUID invoiceId,
        String label,
        UUID customerId,
        String customer,
        LocalDate day,
        Money amount,
        @Nullable String why,
        @Nullable UUID by,
        @Nullable Because because,
        Money left,
        List<Share> shares) {

    /** What took a part back without a person. */
    public enum Because {
        PAID,
        CREDITED
    }

    /** One tax's part of it. */
    public record Share(Wording label, Money base, Money amount) {}

    public WriteOff {
        shares = List.copyOf(shares);
    }

    public boolean isTakenBack() {
        return amount.isNegative();
    }

    /** The part of the taxes. */
    public Money tax() {
        return Money.sum(shares.stream().map(Share::amount).toList(), amount.currency());
    }

    /** What is lost: the amount without its taxes, which the tax office gives back. */
    public Money lost() {
        return amount.minus(tax());
    }
}
