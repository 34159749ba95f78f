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
import java.sql.PreparedStatement;
import java.sql.ResultSet;
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
    public Money kept(UUID customer, Currency currency) {
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
            throw Refusal.of("payment.refund-beyond-credit", Map.of("credit", most))
                    .at("amount")
                    .thrown();
        }
        free(refund.customerId(), refund.day());
        Payment row = Payment.refunded(refund, counted, refund.amount().minus(counted));
        session.persist(row);
        session.flush();
        return row.id();
    }

    /**
     * What a credit note set free pays its invoice no more: the same money would go back and pay. It is freed on the day, or on
     * the last one on which the customer's money moved, so that nothing is freed twice.
     */
    private void free(UUID customer, LocalDate day) {
        session.flush();
        try (Connection connection = datasource.getConnection()) {
            Settling.release(connection, customer, lastMoved(connection, customer, day));
        } catch (SQLException cause) {
            throw new IllegalStateException("what a credit note set free could not be read", cause);
        }
    }

    private static LocalDate lastMoved(Connection connection, UUID customer, LocalDate day) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("""
                select greatest(?::date, max(a.day)) from payment_allocation a
                  join payment p on p.tenant_id = a.tenant_id and p.id = a.payment_id where p.customer_id = ?""")) {
            select.setObject(1, day);
            select.setObject(2, customer);
            ResultSet row = select.executeQuery();
            row.next();
            return row.getObject(1, LocalDate.class);
        }
    }
}
