package changeover.billing.ledger;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.function.Function;

/**
 * What was charged of each tax in a period, what was given back, and what of it customers paid in the period.
 *
 * @param sales all documents of the period before tax, those without any tax too
 */
public record TaxReport(Period period, Currency currency, List<Row> rows, Sales sales) {

    /** Which tax of which place: one line of the report. */
    public record Key(String region, String code, BigDecimal percent, String category) {}

    /** What a figure counts. */
    public enum What {
        /** Charged by invoices that bear a day of the period. */
        INVOICED,
        /** Given back by credit notes that bear a day of the period. */
        CREDITED,
        /** Paid in the period, in proportion to what was paid of each document; money that went back is taken off. */
        PAID,
        /** Given up with debts in the period, less what was taken back. */
        GIVEN_UP
    }

    /** @param base the amounts before tax that it lies on */
    public record Charged(Money base, Money tax) {

        public static Charged nothing(Currency currency) {
            return new Charged(Money.zero(currency), Money.zero(currency));
        }

        public Charged plus(Charged other) {
            return new Charged(base.plus(other.base), tax.plus(other.tax));
        }

        public Charged minus(Charged other) {
            return new Charged(base.minus(other.base), tax.minus(other.tax));
        }
    }

    public record Row(Key key, Wording label, Charged invoiced, Charged credited, Charged paid, Charged givenUp) {

        public Charged net() {
            return invoiced.minus(credited);
        }
    }

    /** Before tax. */
    public record Sales(Money invoiced, Money credited) {

        public Money net() {
            return invoiced.minus(credited);
        }
    }

    /** The sum of a tax column; two taxes may lie on the same amount, so what they lie on has no sum. */
    public Money tax(Function<Row, Charged> column) {
        return Money.sum(rows.stream().map(column).map(Charged::tax).toList(), currency);
    }
}
