package changeover.billing.writeoffs;

import changeover.billing.payments.Owed;
import changeover.billing.payments.PaymentTaken;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Refunds;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** Money that pays nothing open pays what was given up, which is open again for it. */
@ApplicationScoped
class WhenPaymentTaken {

    @Inject
    TakingBack takingBack;

    @Inject
    Payments payments;

    @Inject
    Refunds refunds;

    @Inject
    Owed owed;

    @Inject
    Today today;

    void pay(@Observes PaymentTaken taken) {
        if (!taken.allocated().isEmpty()) {
            List<UUID> paid = taken.allocated().stream()
                    .map(PaymentTaken.Allocated::invoiceId)
                    .toList();
            takingBack.forPaid(paid, taken.day(), taken.paymentId());
        }
        Money free = free(taken);
        if (free.isPositive()) {
            LocalDate open = takingBack.forMoney(taken.customerId(), free, taken.day(), taken.paymentId());
            if (open != null) {
                payments.settle(taken.customerId(), open);
            }
        }
    }

    /** What of the payment neither an open document nor money owed for another payment waits for. */
    private Money free(PaymentTaken taken) {
        if (!taken.credit().isPositive()) {
            return taken.credit();
        }
        Money open = owed.of(taken.customerId(), today.day()).open();
        Money most = refunds.most(taken.customerId(), today.day()).minus(open);
        return most.compareTo(taken.credit()) < 0 ? most : taken.credit();
    }
}
