package changeover.scheduling.closeout;

import changeover.contracts.tenants.OwnedWithGivenId;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A part that stayed at the home, from which place, for which unit and why. */
@Entity
@Table(name = "part_used")
public class PartUsed extends OwnedWithGivenId {

    @Column(name = "visit_id")
    private UUID visitId = new UUID(0, 0);

    @Column(name = "part_code")
    private String partCode = "";

    private BigDecimal quantity = BigDecimal.ZERO;

    @Column(name = "place_id")
    private UUID placeId = new UUID(0, 0);

    @Column(name = "equipment_id")
    private @Nullable UUID equipmentId;

    private @Nullable String why;

    @Column(name = "short_why")
    private @Nullable String shortWhy;

    @Column(name = "old_serial")
    private @Nullable String oldSerial;

    @Column(name = "new_serial")
    private @Nullable String newSerial;

    /** For Hibernate. */
    protected PartUsed() {}

    private PartUsed(UUID id) {
        super(id);
    }

    static PartUsed of(UUID id, UUID visitId, Operation.PartTaken part, UUID place) {
        var row = new PartUsed(id);
        row.visitId = visitId;
        row.partCode = part.part();
        row.quantity = part.quantity();
        row.placeId = place;
        row.equipmentId = part.equipment();
        row.why = part.why();
        row.shortWhy = part.shortWhy();
        row.oldSerial = part.oldSerial();
        row.newSerial = part.newSerial();
        return row;
    }

    public UUID visitId() {
        return visitId;
    }

    public String partCode() {
        return partCode;
    }

    public BigDecimal quantity() {
        return quantity;
    }

    public UUID placeId() {
        return placeId;
    }

    public Optional<UUID> equipmentId() {
        return Optional.ofNullable(equipmentId);
    }

    public Optional<String> why() {
        return Optional.ofNullable(why);
    }

    /** Why more was used than the place held. */
    public Optional<String> shortWhy() {
        return Optional.ofNullable(shortWhy);
    }

    /** Of the part that came out. */
    public Optional<String> oldSerial() {
        return Optional.ofNullable(oldSerial);
    }

    /** Of the part that went in. */
    public Optional<String> newSerial() {
        return Optional.ofNullable(newSerial);
    }
}
