package changeover.contracts.agreements;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.UUID;

/** The customer's yes: by whom, on which day, where it was said, and whether a credit card paid. */
@Entity
@Table(name = "agreement_acceptance")
public class Acceptance extends Owned {

    @Column(name = "agreement_id", updatable = false)
    private UUID agreementId = new UUID(0, 0);

    private LocalDate day = LocalDate.EPOCH;

    @Column(name = "by_name")
    private String byName = "";

    private String channel = "";

    @Column(name = "paid_by_card")
    private boolean paidByCard;

    static Acceptance of(UUID agreementId, Yes yes) {
        var acceptance = new Acceptance();
        acceptance.agreementId = agreementId;
        acceptance.day = yes.day();
        acceptance.byName = yes.byName();
        acceptance.channel = yes.channel().code();
        acceptance.paidByCard = yes.paidByCard();
        return acceptance;
    }

    public UUID agreementId() {
        return agreementId;
    }

    public LocalDate day() {
        return day;
    }

    public String byName() {
        return byName;
    }

    public SaleChannel channel() {
        return SaleChannel.ofCode(channel);
    }

    public boolean paidByCard() {
        return paidByCard;
    }
}
