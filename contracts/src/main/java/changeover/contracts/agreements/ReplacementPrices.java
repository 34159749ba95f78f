package changeover.contracts.agreements;

import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.money.Money;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.plans.Plans;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * A machine that takes another's place leaves the agreed price as it is: what the plan costs more or less with it is said, and the
 * offer for the next term asks it.
 */
@ApplicationScoped
public class ReplacementPrices {

    @Inject
    Agreements agreements;

    @Inject
    Plans plans;

    @Inject
    AllEquipment equipment;

    /**
     * What the machine changes.
     *
     * @param difference of a year at the plan's prices of today; below nought where it costs less
     * @param last the last day of the agreed price
     */
    public record Change(UUID agreement, Wording plan, Money difference, LocalDate last) {}

    /** Empty for a machine that took no other's place, and for a home without an agreement in force. */
    public Optional<Change> of(Equipment machine, LocalDate day) {
        UUID before = machine.followsId().orElse(null);
        UUID home = machine.homeId().orElse(null);
        if (before == null || home == null || machine.endedOn().isPresent()) {
            return Optional.empty();
        }
        return agreements.of(home).stream()
                .filter(agreement -> agreement.term().contains(day))
                .filter(agreement -> agreements.state(agreement, day) == AgreementState.IN_FORCE)
                .findFirst()
                .flatMap(agreement -> equipment.get(before).flatMap(old -> change(agreement, old, machine, home)));
    }

    private Optional<Change> change(Agreement agreement, Equipment old, Equipment machine, UUID home) {
        return plans.find(agreement.planId()).map(plan -> {
            PlanFacts facts = plan.facts();
            List<String> now =
                    equipment.ofHome(home).stream().map(Equipment::kind).toList();
            var then = new ArrayList<>(now);
            then.remove(machine.kind());
            then.add(old.kind());
            return new Change(
                    agreement.id(),
                    plan.name(),
                    facts.priceFor(now).minus(facts.priceFor(then)),
                    agreement.term().until().minusDays(1));
        });
    }
}
