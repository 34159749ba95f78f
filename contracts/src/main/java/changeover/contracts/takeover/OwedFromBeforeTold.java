package changeover.contracts.takeover;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** Customers owe money from before the take-over, as an old list says. */
public record OwedFromBeforeTold(List<Debt> debts) {

    public OwedFromBeforeTold {
        debts = List.copyOf(debts);
    }

    /**
     * What one customer owes.
     *
     * @param amount taxes included
     * @param since not after the take-over
     * @param words what the old list calls it
     */
    public record Debt(UUID customerId, Money amount, LocalDate since, String words) {}
}
