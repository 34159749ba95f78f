package changeover.billing.payments;

import changeover.contracts.tenants.Owned;
import changeover.contracts.words.Refusal;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Locale;
import java.util.UUID;

/** A payment that did not hold: the bank sent it back, or it was noted by mistake. From that day it pays nothing. */
@Entity
@Table(name = "payment_undoing")
public class Undoing extends Owned {

    /** Why the payment does not count. */
    public enum How {
        BOUNCED,
        MISTAKE
    }

    @Column(name = "payment_id")
    private UUID paymentId = new UUID(0, 0);

    private LocalDate day = LocalDate.EPOCH;
    private String how = "";
    private String why = "";

    static Undoing of(Payment payment, How how, LocalDate day, String why) {
        if (why.isBlank()) {
            throw Refusal.of("payment.why-missing").at("why").thrown();
        }
        if (day.isBefore(payment.day())) {
            throw Refusal.of("payment.undone-before").at("day").thrown();
        }
        Undoing undoing = new Undoing();
        undoing.paymentId = payment.id();
        undoing.day = day;
        undoing.how = how.name().toLowerCase(Locale.ROOT);
        undoing.why = why.strip();
        return undoing;
    }

    public UUID paymentId() {
        return paymentId;
    }

    public LocalDate day() {
        return day;
    }

    public How how() {
        return How.valueOf(how.toUpperCase(Locale.ROOT));
    }

    public String why() {
        return why;
    }
}
