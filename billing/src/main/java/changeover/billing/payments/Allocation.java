package changeover.billing.payments;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.UUID;

/** Which document a payment pays since which day, and how much of it; below nought what no longer pays it since then. */
@Entity
@Table(name = "payment_allocation")
public class Allocation extends Owned {

    @Column(name = "payment_id")
    private UUID paymentId = new UUID(0, 0);

    @Column(name = "invoice_id")
    private UUID invoiceId = new UUID(0, 0);

    @Column(name = "amount_minor")
    private long amountMinor;

    private LocalDate day = LocalDate.EPOCH;

    static Allocation of(UUID payment, UUID invoice, Money amount, LocalDate day) {
        Allocation allocation = new Allocation();
        allocation.paymentId = payment;
        allocation.invoiceId = invoice;
        allocation.amountMinor = amount.minor();
        allocation.day = day;
        return allocation;
    }

    public UUID paymentId() {
        return paymentId;
    }

    public UUID invoiceId() {
        return invoiceId;
    }

    public LocalDate day() {
        return day;
    }
}
