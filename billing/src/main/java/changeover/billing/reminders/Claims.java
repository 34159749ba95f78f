package changeover.billing.reminders;

import changeover.billing.payments.OpenByAge;
import changeover.contracts.money.Money;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * What a customer may be asked for, by a letter, from their account or at the door: nothing that a hold keeps back, and nothing
 * that money kept for them would pay, the document due first before the others.
 *
 * @param holds those that stand
 * @param kept what is kept for each customer beyond deposits
 */
public record Claims(List<Hold> holds, Map<UUID, Money> kept) {

    public Claims {
        holds = List.copyOf(holds);
        kept = Map.copyOf(kept);
    }

    /**
     * What may be asked for of one document.
     *
     * @param kept what of it money that is kept for the customer would pay, nought and more
     */
    public record Claim(OpenByAge.Item item, Money kept) {

        public Money left() {
            return item.open().minus(kept);
        }
    }

    /** @param open due first comes first; what comes back has open what may be asked for */
    public List<OpenByAge.Item> of(List<OpenByAge.Item> open) {
        return each(open).stream().map(claim -> claim.item().with(claim.left())).toList();
    }

    /** @param open due first comes first; what is kept pays that first */
    public List<Claim> each(List<OpenByAge.Item> open) {
        Map<UUID, Money> left = new HashMap<>(kept);
        List<Claim> asked = new ArrayList<>();
        for (OpenByAge.Item item : open) {
            if (keepsBack(item)) {
                continue;
            }
            Money pays = least(
                    left.getOrDefault(item.customerId(), Money.zero(item.open().currency())), item.open());
            if (pays.isPositive()) {
                left.merge(item.customerId(), pays.negated(), Money::plus);
            }
            Claim claim = new Claim(item, pays);
            if (claim.left().isPositive()) {
                asked.add(claim);
            }
        }
        return asked;
    }

    public boolean keepsBack(OpenByAge.Item item) {
        return keepsBack(item.customerId(), item.id());
    }

    boolean keepsBack(UUID customer, UUID invoice) {
        return holds.stream()
                .anyMatch(hold -> hold.invoiceId() == null
                        ? hold.customerId().equals(customer)
                        : hold.invoiceId().equals(invoice));
    }

    private static Money least(Money one, Money other) {
        return one.compareTo(other) < 0 ? one : other;
    }
}
