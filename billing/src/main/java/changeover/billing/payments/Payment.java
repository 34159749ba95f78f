package changeover.billing.payments;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Owned;
import changeover.contracts.words.Refusal;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Currency;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Money that came in or went back; it is never changed, only undone by a row that says how. */
@Entity
@Table(name = "payment")
public class Payment extends Owned {

    private String kind = "payment";

    @Column(name = "customer_id")
    private UUID customerId = new UUID(0, 0);

    private LocalDate day = LocalDate.EPOCH;
    private String way = "";

    @Column(name = "amount_minor")
    private long amountMinor;

    @Column(name = "rounding_minor")
    private long roundingMinor;

    private String currency = "";
    private @Nullable String reference;
    private @Nullable String note;

    /**
     * @param counted what counts against documents
     * @param rounding what cash was rounded by: handed over less counted
     */
    static Payment taken(NewPayment taken, Money counted, Money rounding) {
        Payment payment = of("payment", taken.customerId(), taken.day(), taken.way(), counted);
        payment.roundingMinor = rounding.minor();
        payment.reference = taken.reference();
        payment.note = taken.note();
        return payment;
    }

    static Payment refunded(NewRefund refund, Money counted, Money rounding) {
        Payment payment = of("refund", refund.customerId(), refund.day(), refund.way(), counted);
        payment.roundingMinor = rounding.minor();
        payment.reference = refund.reference();
        payment.note = refund.note();
        return payment;
    }

    private static Payment of(String kind, UUID customer, LocalDate day, Way way, Money amount) {
        if (!amount.isPositive()) {
            throw Refusal.of("payment.nothing").at("amount").thrown();
        }
        Payment payment = new Payment();
        payment.kind = kind;
        payment.customerId = customer;
        payment.day = day;
        payment.way = way.code();
        payment.amountMinor = amount.minor();
        payment.currency = amount.currency().getCurrencyCode();
        return payment;
    }

    public boolean isRefund() {
        return kind.equals("refund");
    }

    public UUID customerId() {
        return customerId;
    }

    public LocalDate day() {
        return day;
    }

    public Way way() {
        return Way.of(way);
    }

    public Money amount() {
        return new Money(amountMinor, Currency.getInstance(currency));
    }

    /** What was handed over. */
    public Money tendered() {
        return new Money(amountMinor + roundingMinor, Currency.getInstance(currency));
    }

    public @Nullable String reference() {
        return reference;
    }

    public @Nullable String note() {
        return note;
    }
}
