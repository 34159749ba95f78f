package changeover.billing.payments;

import jakarta.persistence.EntityManager;
import java.util.UUID;

/** What moves one customer's money is done one after the other, payments and what is given up alike, so that each sees what is open. */
public final class CustomersTurn {

    private CustomersTurn() {}

    /** Until the transaction ends. */
    public static void wait(EntityManager session, UUID customer) {
        session.flush();
        session.createNativeQuery("select 1 from pg_advisory_xact_lock(hashtextextended(:customer, 7))")
                .setParameter("customer", customer.toString())
                .getSingleResult();
    }
}
