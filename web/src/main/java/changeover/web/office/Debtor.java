package changeover.web.office;

import changeover.billing.payments.CashRounding;
import changeover.billing.payments.OwedBy;
import changeover.contracts.customers.Customer;
import changeover.web.session.Frame;
import java.util.UUID;

/**
 * One who owes, or whose statement is shown.
 *
 * @param inCash what all of it comes to in cash; empty where that is the same
 */
public record Debtor(UUID id, String name, String open, String inCash, String credit, String beyond) {

    static Debtor of(Customer customer, OwedBy standing, Frame frame) {
        return new Debtor(
                customer.id(),
                customer.name(),
                standing.all().format(frame.locale()),
                CashRounding.of(standing.all()).equals(standing.all())
                        ? ""
                        : CashRounding.of(standing.all()).format(frame.locale()),
                standing.credit().isZero() ? "" : standing.credit().format(frame.locale()),
                standing.beyond().isZero() ? "" : standing.beyond().format(frame.locale()));
    }
}
