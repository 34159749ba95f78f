package changeover.contracts.plans;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Owned;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import jakarta.persistence.CascadeType;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A tier of the business's own: so many visits a year, these tasks and parts, at this price. What is sold copies it, so
 * a plan may change while its agreements stay as they were signed.
 */
@Entity
@Table(name = "plan")
public class Plan extends Owned {

    private String code = "";

    @Column(name = "name_en")
    private String nameEn = "";

    @Column(name = "name_fr")
    private String nameFr = "";

    private int visits;

    @Column(name = "price_minor")
    private long priceMinor;

    private String currency = "CAD";

    @Column(name = "discount_percent")
    private BigDecimal discountPercent = BigDecimal.ZERO;

    private int instalments = 1;

    @Column(name = "included_minutes")
    private int includedMinutes;

    @Column(name = "covers_repairs")
    private boolean coversRepairs;

    @Column(name = "on_sale_from")
    private @Nullable LocalDate onSaleFrom;

    @Column(name = "withdrawn_on")
    private @Nullable LocalDate withdrawnOn;

    @OneToMany(mappedBy = "plan", cascade = CascadeType.ALL, orphanRemoval = true)
    @OrderBy("position")
    private List<PlanTask> tasks = new ArrayList<>();

    @OneToMany(mappedBy = "plan", cascade = CascadeType.ALL, orphanRemoval = true)
    @OrderBy("partKind")
    private List<PlanPart> parts = new ArrayList<>();

    @OneToMany(mappedBy = "plan", cascade = CascadeType.ALL, orphanRemoval = true)
    @OrderBy("kind")
    private List<PlanExtra> extras = new ArrayList<>();

    @Version
    private int version;

    /** A plan that nobody can buy yet. */
    static Plan draft(PlanFacts facts) {
        var plan = new Plan();
        plan.change(facts);
        return plan;
    }

    /**
     * Writes the plan anew. What was sold or offered before keeps the facts it was offered with.
     *
     * @throws Refused with a sentence for each field that cannot be so
     */
    public void change(PlanFacts facts) {
        var refusals = facts.refusals();
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        code = facts.code();
        nameEn = facts.name().en();
        nameFr = facts.name().fr();
        visits = facts.visits();
        priceMinor = facts.price().minor();
        currency = facts.price().currency().getCurrencyCode();
        discountPercent = facts.discountPercent();
        instalments = facts.instalments();
        includedMinutes = facts.includedMinutes();
        coversRepairs = facts.coversRepairs();
        promise(facts.tasks());
        include(facts.parts());
        charge(facts.extras());
    }

    private void promise(List<PlanFacts.Promise> promises) {
        tasks.removeIf(task ->
                promises.stream().noneMatch(promise -> promise.taskCode().equals(task.taskCode())));
        for (int position = 0; position < promises.size(); position++) {
            PlanFacts.Promise promise = promises.get(position);
            int place = position;
            task(promise.taskCode())
                    .ifPresentOrElse(
                            task -> task.promise(promise.cadence(), place),
                            () -> tasks.add(PlanTask.of(this, promise.taskCode(), promise.cadence(), place)));
        }
    }

    private void include(List<PlanFacts.Included> included) {
        parts.removeIf(part -> included.stream().noneMatch(one -> one.partKind().equals(part.partKind())));
        for (PlanFacts.Included one : included) {
            parts.stream()
                    .filter(part -> part.partKind().equals(one.partKind()))
                    .findFirst()
                    .ifPresentOrElse(
                            part -> part.include(one.quantityAYear()),
                            () -> parts.add(PlanPart.of(this, one.partKind(), one.quantityAYear())));
        }
    }

    private void charge(List<PlanFacts.Extra> charged) {
        extras.removeIf(extra -> charged.stream().noneMatch(one -> one.kind().equals(extra.kind())));
        for (PlanFacts.Extra one : charged) {
            extras.stream()
                    .filter(extra -> extra.kind().equals(one.kind()))
                    .findFirst()
                    .ifPresentOrElse(extra -> extra.charge(one), () -> extras.add(PlanExtra.of(this, one)));
        }
    }

    /** From this day on it may be offered. */
    public void putOnSale(LocalDate day) {
        if (tasks.isEmpty()) {
            throw Refusal.of("plan.promises-nothing").at("tasks").thrown();
        }
        onSaleFrom = day;
        withdrawnOn = null;
    }

    /** From this day on it is no longer offered; its agreements run on. */
    public void withdraw(LocalDate day) {
        if (onSaleFrom == null) {
            throw Refusal.of("plan.never-on-sale").thrown();
        }
        withdrawnOn = day;
    }

    public boolean isOnSale(LocalDate day) {
        return onSaleFrom != null && !day.isBefore(onSaleFrom) && (withdrawnOn == null || day.isBefore(withdrawnOn));
    }

    private Optional<PlanTask> task(String taskCode) {
        return tasks.stream().filter(task -> task.taskCode().equals(taskCode)).findFirst();
    }

    public PlanFacts facts() {
        return new PlanFacts(
                code,
                name(),
                visits,
                price(),
                discountPercent,
                instalments,
                includedMinutes,
                coversRepairs,
                tasks.stream()
                        .map(task -> new PlanFacts.Promise(
                                task.taskCode(), task.cadence().orElse(null)))
                        .toList(),
                parts.stream()
                        .map(part -> new PlanFacts.Included(part.partKind(), part.quantityAYear()))
                        .toList(),
                extras.stream().map(extra -> extra.facts(currency)).toList());
    }

    public String code() {
        return code;
    }

    public Wording name() {
        return new Wording(nameEn, nameFr);
    }

    public int visits() {
        return visits;
    }

    public Money price() {
        return Money.ofMinor(priceMinor, currency);
    }

    public Optional<LocalDate> onSaleFrom() {
        return Optional.ofNullable(onSaleFrom);
    }

    public Optional<LocalDate> withdrawnOn() {
        return Optional.ofNullable(withdrawnOn);
    }

    public int version() {
        return version;
    }
}
