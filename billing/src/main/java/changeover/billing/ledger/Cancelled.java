package changeover.billing.ledger;

import changeover.billing.tax.TaxLine;
import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * A plan that ends before its term does, with what was done, billed and paid until then.
 *
 * @param plan its price and what each promise's share is
 * @param day the first day the plan no longer holds; what was done on it counts as done
 * @param done the days on which visits were done, by the promise's name
 * @param billed what was billed of the price, before tax, on one document
 * @param taxes the taxes of that document, each on all that was billed
 * @param paid what the customer paid, with tax
 */
public record Cancelled(
        Recognition plan, LocalDate day, Map<String, LocalDate> done, Money billed, List<TaxLine> taxes, Money paid) {

    public Cancelled {
        done = Map.copyOf(done);
        taxes = List.copyOf(taxes);
        if (billed.isNegative() || billed.compareTo(plan.price()) > 0) {
            throw new IllegalArgumentException("What is billed lies between nought and the price.");
        }
        if (taxes.stream().anyMatch(tax -> !tax.base().equals(billed))) {
            throw new IllegalArgumentException("Each tax lies on all that was billed.");
        }
        if (paid.isNegative()) {
            throw new IllegalArgumentException("What is paid cannot be below nought.");
        }
    }

    Money billedWithTax() {
        return Money.sum(taxes.stream().map(TaxLine::amount).toList(), billed.currency())
                .plus(billed);
    }

    /** What of the price the business keeps that way, never more than the price. */
    Money kept(RefundWay way) {
        Money days = plan.price().fraction(plan.term().elapsed(day), plan.term().days());
        return switch (way) {
            case PRO_RATA -> days;
            case WORK_DONE -> work(day);
            case PRO_RATA_LESS_WORK -> smaller(plan.price(), days.plus(visits()));
        };
    }

    /** Visits done up to and with the day, and the days of standing ready that are over when it begins. */
    private Money work(LocalDate until) {
        return plan.earnedBefore(until, Map.of()).plus(visits());
    }

    private Money visits() {
        LocalDate next = day.plusDays(1);
        return plan.earnedBefore(next, done).minus(plan.earnedBefore(next, Map.of()));
    }

    private static Money smaller(Money one, Money other) {
        return one.compareTo(other) <= 0 ? one : other;
    }
}
