package changeover.contracts.plans;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.ConstraintMode;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.ForeignKey;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import org.jspecify.annotations.Nullable;

/** What each further machine of a kind costs a year, beyond those that the plan's own price holds for. */
@Entity
@Table(name = "plan_extra")
class PlanExtra extends Owned {

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "plan_id", updatable = false, foreignKey = @ForeignKey(ConstraintMode.NO_CONSTRAINT))
    private @Nullable Plan plan;

    @Column(updatable = false)
    private String kind = "";

    private int included;

    @Column(name = "price_minor")
    private long priceMinor;

    static PlanExtra of(Plan plan, PlanFacts.Extra facts) {
        var extra = new PlanExtra();
        extra.plan = plan;
        extra.kind = facts.kind();
        extra.charge(facts);
        return extra;
    }

    void charge(PlanFacts.Extra facts) {
        included = facts.included();
        priceMinor = facts.price().minor();
    }

    String kind() {
        return kind;
    }

    PlanFacts.Extra facts(String currency) {
        return new PlanFacts.Extra(kind, included, Money.ofMinor(priceMinor, currency));
    }
}
