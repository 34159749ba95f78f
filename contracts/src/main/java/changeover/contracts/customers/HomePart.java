package changeover.contracts.customers;

import changeover.contracts.tenants.Owned;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A customer plays a part in a home from a day (in) until a day (out); the past stays readable. */
@Entity
@Table(name = "home_part")
public class HomePart extends Owned {

    @Column(name = "home_id", updatable = false)
    private UUID homeId = new UUID(0, 0);

    @Column(name = "customer_id", updatable = false)
    private UUID customerId = new UUID(0, 0);

    @Column(updatable = false)
    private String part = "";

    @Column(name = "from_day", updatable = false)
    private LocalDate from = LocalDate.EPOCH;

    @Column(name = "until_day")
    private @Nullable LocalDate until;

    @Column(name = "purchase_order")
    private @Nullable String purchaseOrder;

    static HomePart begin(
            UUID homeId, UUID customerId, PartInHome part, LocalDate from, @Nullable String purchaseOrder) {
        var checks = new Checks();
        var begun = new HomePart();
        begun.homeId = homeId;
        begun.customerId = customerId;
        begun.part = part.code();
        begun.from = from;
        begun.purchaseOrder = checks.optionalLine("purchaseOrder", purchaseOrder);
        checks.orRefuse();
        return begun;
    }

    /** The part ends before this day. Refused on or before the day that it began. */
    void end(LocalDate day) {
        if (!day.isAfter(from)) {
            throw Refusal.of("home-part.ends-too-early").at("until").thrown();
        }
        until = day;
    }

    public boolean isPlayedOn(LocalDate day) {
        return !day.isBefore(from) && (until == null || day.isBefore(until));
    }

    public UUID homeId() {
        return homeId;
    }

    public UUID customerId() {
        return customerId;
    }

    public PartInHome part() {
        return PartInHome.of(part);
    }

    public LocalDate from() {
        return from;
    }

    public Optional<LocalDate> until() {
        return Optional.ofNullable(until);
    }

    /** The payer's own order number for this home, which outranks the one on the customer. */
    public Optional<String> purchaseOrder() {
        return Optional.ofNullable(purchaseOrder);
    }
}
