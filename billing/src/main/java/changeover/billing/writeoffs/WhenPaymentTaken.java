package changeover.billing.writeoffs;

import changeover.billing.payments.PaymentTaken;
import changeover.billing.payments.Payments;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.time.LocalDate;

/** Money that pays nothing open pays what was given up, which is open again for it. */
@ApplicationScoped
class WhenPaymentTaken {

    @Inject
    TakingBack takingBack;

    @Inject
    Payments payments;

    void pay(@Observes PaymentTaken taken) {
        if (taken.credit().isPositive()) {
            LocalDate open = takingBack.forMoney(taken.customerId(), taken.credit(), taken.day(), taken.paymentId());
            if (open != null) {
                payments.settle(taken.customerId(), open);
            }
        }
    }
}
