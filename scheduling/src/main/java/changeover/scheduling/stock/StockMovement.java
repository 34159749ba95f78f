package changeover.scheduling.stock;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Parts came to a place or left it; a movement is never changed, a wrong one is answered by another. */
@Entity
@Table(name = "stock_movement")
public class StockMovement extends Owned {

    @Column(name = "part_code", updatable = false)
    private String partCode = "";

    @Column(name = "place_id", updatable = false)
    private UUID placeId = new UUID(0, 0);

    @Column(updatable = false)
    private BigDecimal quantity = BigDecimal.ZERO;

    @Column(updatable = false)
    private String kind = "";

    @Column(updatable = false)
    private @Nullable String why;

    @Column(name = "visit_id", updatable = false)
    private @Nullable UUID visitId;

    @Column(name = "operation_id", updatable = false)
    private @Nullable UUID operationId;

    @Column(updatable = false)
    private LocalDate day = LocalDate.EPOCH;

    /** Both ends of a move, and all lines of a receipt or a count, carry the same batch. */
    @Column(updatable = false)
    private @Nullable UUID batch;

    static StockMovement of(
            MovementKind kind, String partCode, UUID placeId, BigDecimal quantity, Cause cause, LocalDate day) {
        var movement = new StockMovement();
        movement.kind = kind.code();
        movement.partCode = partCode;
        movement.placeId = placeId;
        movement.quantity = quantity;
        movement.why = cause.why();
        movement.visitId = cause.visitId();
        movement.operationId = cause.operationId();
        movement.batch = cause.operationId();
        movement.day = day;
        return movement;
    }

    /** What a movement comes from: the operation that asked for it, the visit it happened at, a reason in words. */
    public record Cause(
            UUID operationId,
            @Nullable UUID visitId,
            @Nullable String why) {}

    public String partCode() {
        return partCode;
    }

    public UUID placeId() {
        return placeId;
    }

    /** Above zero into the place, below zero out of it. */
    public BigDecimal quantity() {
        return quantity;
    }

    public MovementKind kind() {
        return MovementKind.of(kind);
    }

    public Optional<String> why() {
        return Optional.ofNullable(why);
    }

    public Optional<UUID> visitId() {
        return Optional.ofNullable(visitId);
    }

    public Optional<UUID> operationId() {
        return Optional.ofNullable(operationId);
    }

    public LocalDate day() {
        return day;
    }
}
