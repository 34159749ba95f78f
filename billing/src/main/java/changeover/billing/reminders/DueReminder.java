package changeover.billing.reminders;

import changeover.billing.payments.OpenByAge;
import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;

/**
 * A letter that is due to one customer: the highest step of theirs, about every document that a step is due for.
 *
 * @param items due first comes first
 */
public record DueReminder(UUID customerId, String customer, Step step, List<Asked> items) {

    /**
     * A document with its own step.
     *
     * @param kept what of it money that is kept for the customer would pay
     */
    public record Asked(OpenByAge.Item item, Money kept, Step step) {

        /** What is asked for. */
        public Money left() {
            return item.open().minus(kept);
        }

        public long daysLate(LocalDate day) {
            return ChronoUnit.DAYS.between(item.dueDay(), day);
        }
    }

    public DueReminder {
        items = List.copyOf(items);
    }

    public Money total() {
        return Money.sum(
                items.stream().map(Asked::left).toList(),
                items.getFirst().item().open().currency());
    }
}
