package changeover.billing.bank;

import changeover.billing.payments.Way;
import changeover.contracts.digests.Sha256;
import changeover.contracts.money.Money;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a line may be, and why; nothing is booked before a person says yes.
 *
 * @param what to book a payment, to tie the line to one or several that were noted, or to take a returned one back
 * @param customerId whose money it is; null for several together
 * @param customer their name; of several the first few
 * @param paymentId of what was noted or came back; none for a new payment
 * @param invoices what the money would pay; none lets it pay the oldest first
 * @param sure the number and the amount say the same, or nothing else could be meant
 * @param group what several have in common, null for one
 */
public record Proposal(
        What what,
        @Nullable UUID customerId,
        String customer,
        List<UUID> paymentId,
        List<Target> invoices,
        List<Reason> why,
        boolean sure,
        @Nullable Group group) {

    /** The way and the day of payments that came to the bank as one sum. */
    public record Group(LocalDate day, Way way) {}

    /** What the money would be. */
    public enum What {
        PAYMENT,
        NOTED,
        TOGETHER,
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
        LESS,
        ONE_DAY
    }

    public record Target(UUID invoiceId, String label, Money open) {}

    static Proposal together(String names, List<UUID> payments, Group group) {
        return new Proposal(
                What.TOGETHER, null, names, payments, List.of(), List.of(Reason.AMOUNT, Reason.ONE_DAY), false, group);
    }

    /** What a person saw, so that their yes is to nothing else; of many payments a digest, so that it stays short. */
    public String shown() {
        if (what == What.TOGETHER) {
            return what + " " + paymentId.size() + " "
                    + Sha256.hex(paymentId.toString().getBytes(StandardCharsets.UTF_8));
        }
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
