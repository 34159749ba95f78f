package changeover.billing.payments;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * Whoever says what a payment pays says it right: each document once, no more than is open of it, and together no more than
 * came in. What came in beyond the parts is the customer's credit.
 */
@ApplicationScoped
class NamedParts {

    private static final String FIELD = "parts";

    @Inject
    Owed owed;

    @Inject
    Today today;

    /** Of a document that was given up as much may be paid as was: money takes that back. */
    void check(NewPayment payment) {
        Set<UUID> named = new HashSet<>();
        Money sum = Money.zero(payment.amount().currency());
        for (NewPayment.Part part : payment.parts()) {
            if (!part.amount().isPositive()) {
                throw Refusal.of("payment.nothing").at(FIELD).thrown();
            }
            if (!named.add(part.invoiceId())) {
                throw Refusal.of("payment.part-twice").at(FIELD).thrown();
            }
            owed.item(part.invoiceId(), today.day())
                    .filter(item -> item.customerId().equals(payment.customerId()))
                    .ifPresent(item -> fits(part, item));
            sum = sum.plus(part.amount());
        }
        boolean rounded = payment.way() == Way.CASH && CashRounding.of(sum).equals(payment.amount());
        if (sum.compareTo(payment.amount()) > 0 && !rounded) {
            throw Refusal.of("payment.parts-beyond", Map.of("sum", sum, "amount", payment.amount()))
                    .at(FIELD)
                    .thrown();
        }
    }

    private static void fits(NewPayment.Part part, OpenItem item) {
        Money open = item.open().plus(item.givenUp());
        if (!open.isPositive()) {
            throw Refusal.of("payment.part-paid", Map.of("document", item.label()))
                    .at(FIELD)
                    .thrown();
        }
        if (part.amount().compareTo(open) > 0) {
            throw Refusal.of("payment.part-beyond", Map.of("document", item.label(), "open", open))
                    .at(FIELD)
                    .thrown();
        }
    }
}
