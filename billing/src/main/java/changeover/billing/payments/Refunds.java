package changeover.billing.payments;

import changeover.billing.periods.Periods;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Currency;
import java.util.Map;
import java.util.UUID;

/** Money goes back to a customer out of what is kept for them, never more. */
@ApplicationScoped
public class Refunds {

    @Inject
    EntityManager session;

    @Inject
    AgroalDataSource datasource;

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
        Money least = then.compareTo(now) < 0 ? then : now;
        return least.minus(kept(customer, least.currency())).aboveNought();
    }

    /** A deposit is given back as a deposit, never as a credit. */
    private Money kept(UUID customer, Currency currency) {
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            return DepositRows.kept(connection, customer, currency);
        } catch (SQLException cause) {
            throw new IllegalStateException("the deposits could not be read", cause);
        }
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
