package changeover.contracts.plans;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.ConstraintMode;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.ForeignKey;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** A kind of part that a plan includes, and how many a year. */
@Entity
@Table(name = "plan_part")
public class PlanPart extends Owned {

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "plan_id", updatable = false, foreignKey = @ForeignKey(ConstraintMode.NO_CONSTRAINT))
    private @Nullable Plan plan;

    @Column(name = "part_kind", updatable = false)
    private String partKind = "";

    @Column(name = "quantity_a_year")
    private BigDecimal quantityAYear = BigDecimal.ONE;

    static PlanPart of(Plan plan, String partKind, BigDecimal quantityAYear) {
        var part = new PlanPart();
        part.plan = plan;
        part.partKind = partKind;
        part.quantityAYear = quantityAYear;
        return part;
    }

    void include(BigDecimal newQuantityAYear) {
        quantityAYear = newQuantityAYear;
    }

    public String partKind() {
        return partKind;
    }

    public BigDecimal quantityAYear() {
        return quantityAYear;
    }
}
