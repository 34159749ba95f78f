package changeover.billing.ledger;

import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * What is earned at the end of a day, before tax: by plans as their promises are kept, by visits as they are invoiced.
 *
 * @param visits invoices that are no plan's, less what was given back of them
 */
public record EarnedOn(LocalDate day, Currency currency, List<Plan> plans, Span visits, Span fees) {

    /** The days up to a day that a figure is the sum of. */
    public enum Days {
        MONTH,
        YEAR,
        EVER;

        public static Optional<Days> of(String code) {
            return Arrays.stream(values())
                    .filter(one -> one.code().equals(code))
                    .findFirst();
        }

        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The first of them. */
        public LocalDate from(LocalDate day) {
            return switch (this) {
                case MONTH -> day.withDayOfMonth(1);
                case YEAR -> day.withDayOfYear(1);
                case EVER -> LocalDate.of(1, 1, 1);
            };
        }
    }

    /** In the month of the day, in its year, and since the beginning. */
    public record Span(Money month, Money year, Money ever) {

        public Money in(Days days) {
            return switch (days) {
                case MONTH -> month;
                case YEAR -> year;
                case EVER -> ever;
            };
        }

        public Span plus(Span other) {
            return new Span(month.plus(other.month), year.plus(other.year), ever.plus(other.ever));
        }
    }

    /** What the split of a plan's price over its promises rests on. */
    public enum Basis {
        /** The prices of the price book, all of them. */
        PRICES,
        /** Something has no price: an hour counts as 60.00, a part without a price as a quarter of an hour. */
        ASSUMED,
        /** Nothing is laid out that could be done: day by day. */
        DAYS
    }

    /**
     * One agreement on the day.
     *
     * @param ended the first day on which it no longer held, when that day has come
     * @param invoiced before tax, less what credit notes gave back
     * @param givenBack by credit notes
     */
    public record Plan(
            UUID agreementId,
            int number,
            UUID homeId,
            String home,
            UUID customerId,
            String customer,
            Wording plan,
            Term term,
            @Nullable LocalDate ended,
            Basis basis,
            Span earned,
            Money invoiced,
            Money givenBack) {

        /** Invoiced and not yet earned: owed to the customer as service, or to be given back. */
        public Money prepaid() {
            return invoiced.minus(earned.ever()).aboveNought();
        }

        /** Earned and not yet invoiced. */
        public Money ahead() {
            return earned.ever().minus(invoiced).aboveNought();
        }
    }

    public Span earnedByPlans() {
        Span nothing = new Span(Money.zero(currency), Money.zero(currency), Money.zero(currency));
        return plans.stream().map(Plan::earned).reduce(nothing, Span::plus);
    }

    /** Plans, work invoiced by visit and fees. */
    public Span together() {
        return earnedByPlans().plus(visits).plus(fees);
    }

    public Money sum(Function<Plan, Money> of) {
        return Money.sum(plans.stream().map(of).toList(), currency);
    }

    public List<Plan> where(Predicate<Plan> holds) {
        return plans.stream().filter(holds).toList();
    }

    /** Prepaid of terms that are over: nobody asked for the rest, and only evidence that nobody will would earn it. */
    public boolean overdue(Plan plan) {
        return plan.prepaid().isPositive() && !plan.term().until().isAfter(day);
    }
}
