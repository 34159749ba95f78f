package changeover.billing.ledger;

import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A plan's price is earned promise by promise: a visit's share on the day it is done, standing ready day by day. What is not
 * earned is owed to the customer as service; tax is never earned.
 *
 * <p>A visit that is not done by the end of the term stays owed: only evidence that it will never be asked for would earn it.
 */
public record Recognition(Term term, Money price, List<Share> shares) {

    /** What of the price belongs to one promise. */
    public record Share(Promised promised, Money amount) {}

    public Recognition {
        shares = List.copyOf(shares);
    }

    /**
     * @param price before tax, never below nought
     * @throws IllegalArgumentException in a sentence: no promise, two of one name, or nothing that costs something alone
     */
    public static Recognition of(Money price, Term term, List<Promised> promised, List<SoldTogether> together) {
        if (price.isNegative()) {
            throw new IllegalArgumentException("The price cannot be below nought.");
        }
        if (promised.isEmpty()) {
            throw new IllegalArgumentException("A plan without a promise earns nothing.");
        }
        long names = promised.stream().map(Promised::name).distinct().count();
        if (names < promised.size()) {
            throw new IllegalArgumentException("Two promises have the same name.");
        }
        List<Money> shares = PriceShares.of(price, promised, together);
        return new Recognition(
                term,
                price,
                IntStream.range(0, shares.size())
                        .mapToObj(index -> new Share(promised.get(index), shares.get(index)))
                        .toList());
    }

    /**
     * What is earned when that day begins.
     *
     * @param done the days on which visits were done, by the promise's name
     */
    public Money earnedBefore(LocalDate day, Map<String, LocalDate> done) {
        for (String name : done.keySet()) {
            if (shares.stream().noneMatch(share -> share.promised().name().equals(name))) {
                throw new IllegalArgumentException("Nothing called " + name + " is promised.");
            }
        }
        return Money.sum(shares.stream().map(share -> earned(share, day, done)).toList(), price.currency());
    }

    /** What is prepaid when that day begins. */
    public Money owedBefore(LocalDate day, Map<String, LocalDate> done) {
        return price.minus(earnedBefore(day, done));
    }

    /** What a period earns, its last day out: the periods of a term add up to the cent. */
    public Money earnedIn(LocalDate from, LocalDate until, Map<String, LocalDate> done) {
        return earnedBefore(until, done).minus(earnedBefore(from, done));
    }

    private Money earned(Share share, LocalDate day, Map<String, LocalDate> done) {
        return switch (share.promised().earned()) {
            case BY_DAY -> share.amount().fraction(term.elapsed(day), term.days());
            case WHEN_DONE -> {
                LocalDate doneOn = done.get(share.promised().name());
                yield doneOn != null && doneOn.isBefore(day) ? share.amount() : Money.zero(price.currency());
            }
        };
    }
}
