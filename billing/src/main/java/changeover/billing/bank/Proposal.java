package changeover.billing.bank;

import changeover.contracts.money.Money;
import java.util.List;
import java.util.UUID;

/**
 * What a line may be, and why; nothing is booked before a person says yes.
 *
 * @param what to book a payment, to tie the line to one that was noted, or to take a returned one back
 * @param paymentId of what was noted or came back; none for a new payment
 * @param invoices what the money would pay; none lets it pay the oldest first
 * @param sure the number and the amount say the same, or nothing else could be meant
 */
public record Proposal(
        What what,
        UUID customerId,
        String customer,
        List<UUID> paymentId,
        List<Target> invoices,
        List<Reason> why,
        boolean sure) {

    /** What the money would be. */
    public enum What {
        PAYMENT,
        NOTED,
        RETURNED
    }

    /** Why it is proposed, in the order in which people look. */
    public enum Reason {
        NUMBER,
        REFERENCE,
        AMOUNT,
        NAME,
        PAYER,
        ONLY_ONE,
        BEYOND,
        LESS
    }

    public record Target(UUID invoiceId, String label, Money open) {}

    /** What a person saw, so that their yes is to nothing else. */
    public String shown() {
        return what + " " + customerId + " " + paymentId + " "
                + invoices.stream()
                        .map(one -> one.invoiceId() + "=" + one.open().minor())
                        .toList();
    }

    public Proposal {
        paymentId = List.copyOf(paymentId);
        invoices = List.copyOf(invoices);
        why = List.copyOf(why);
    }
}
