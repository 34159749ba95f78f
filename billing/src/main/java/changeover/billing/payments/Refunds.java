package changeover.billing.payments;

import changeover.billing.periods.Periods;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.Map;
import java.util.UUID;

/** Money goes back to a customer out of what is kept for them, never more. */
@ApplicationScoped
public class Refunds {

    @Inject
    EntityManager session;

    @Inject
    Owed owed;

    @Inject
    Today today;

    @Inject
    Periods periods;

    /** What may go back on the day: what was kept then and still is. */
    public Money most(UUID customer, LocalDate day) {
        Money then = owed.of(customer, day).credit();
        Money now = owed.of(customer, today.day()).credit();
        return then.compareTo(now) < 0 ? then : now;
    }

    /**
     * Notes a refund. In cash the whole credit rounded to five cents gives the whole credit back.
     *
     * @throws changeover.contracts.words.Refused for nothing, a day to come or closed, or more than the credit
     */
    public UUID give(NewRefund refund) {
        if (refund.day().isAfter(today.day())) {
            throw Refusal.of("payment.refund-to-come").at("day").thrown();
        }
        periods.check(refund.day());
        CustomersTurn.wait(session, refund.customerId());
        Money most = most(refund.customerId(), refund.day());
        boolean whole = refund.way() == Way.CASH && CashRounding.of(most).equals(refund.amount());
        Money counted = whole ? most : refund.amount();
        if (counted.compareTo(most) > 0) {
            throw Refusal.of("payment.refund-beyond-credit", Map.of("credit", most.decimal()))
                    .at("amount")
                    .thrown();
        }
        Payment row = Payment.refunded(refund, counted, refund.amount().minus(counted));
        session.persist(row);
        session.flush();
        return row.id();
    }
}
