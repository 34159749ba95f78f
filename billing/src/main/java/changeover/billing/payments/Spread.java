package changeover.billing.payments;

import changeover.contracts.money.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/**
 * A payment without a named document pays the oldest first, by the day due; what is left when all are paid is the
 * customer's credit.
 */
public record Spread(List<NewPayment.Part> parts, Money left) {

    /** @param open oldest first */
    public static Spread over(Money amount, List<Owing> open) {
        List<NewPayment.Part> parts = new ArrayList<>();
        Money left = amount;
        for (Owing one : open) {
            Money part = left.compareTo(one.open()) < 0 ? left : one.open();
            if (part.isPositive()) {
                parts.add(new NewPayment.Part(one.invoiceId(), part));
                left = left.minus(part);
            }
        }
        return new Spread(List.copyOf(parts), left);
    }

    public record Owing(UUID invoiceId, Money open) {}
}
