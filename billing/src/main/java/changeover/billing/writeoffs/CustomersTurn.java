package changeover.billing.writeoffs;

import jakarta.persistence.EntityManager;
import java.util.UUID;

/** What moves one customer's money is done one after the other, payments and what is given up alike. */
final class CustomersTurn {

    private CustomersTurn() {}

    /** Until the transaction ends; the same key as a payment's. */
    static void wait(EntityManager session, UUID customer) {
        session.flush();
        session.createNativeQuery("select 1 from pg_advisory_xact_lock(hashtextextended(:customer, 7))")
                .setParameter("customer", customer.toString())
                .getSingleResult();
    }
}
