package changeover.contracts.agreements;

import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A plan's price in equal instalments spread over the term: their sum is the price, the odd cents are on the first.
 *
 * <p>The first falls on the first day of the term, the others in equal steps of months, clipped to the month's end.
 */
public record Instalments(List<Instalment> all) {

    /** @param number from 1 */
    public record Instalment(int number, LocalDate day, Money amount) {}

    public Instalments {
        all = List.copyOf(all);
    }

    /**
     * @param count one or more, at most one for every month of the term
     * @throws IllegalArgumentException for any other count
     */
    public static Instalments of(Money price, int count, Term term) {
        long months = term.months();
        if (count < 1 || count > months) {
            throw new IllegalArgumentException("instalments: " + count + " in " + months + " months");
        }
        List<Money> amounts = price.split(count);
        List<Instalment> all = new ArrayList<>(count);
        for (int index = 0; index < count; index++) {
            all.add(new Instalment(index + 1, term.from().plusMonths(months * index / count), amounts.get(index)));
        }
        return new Instalments(all);
    }
}
