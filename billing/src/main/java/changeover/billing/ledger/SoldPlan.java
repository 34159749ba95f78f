package changeover.billing.ledger;

import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * An accepted agreement with all that was asked for it and done for it, to be looked at on any day.
 *
 * <p>Its price is what was asked and is still to be asked, before tax, less what was given back or let go. When it has ended,
 * nothing more is earned by days or visits; from the day on which it is settled, what the settlement keeps is earned.
 *
 * @param done days by the promise's name
 * @param ended the first day on which it no longer held, or null
 * @param settled each time that it was settled, the first one first
 */
record SoldPlan(
        Head head,
        List<Promised> promised,
        EarnedOn.Basis basis,
        Map<String, LocalDate> done,
        List<Asked> asked,
        @Nullable LocalDate ended,
        List<Settlement.Settled> settled) {

    /** Whose agreement, and which. */
    record Head(
            UUID id, int number, UUID homeId, String home, UUID customerId, String customer, Wording plan, Term term) {}

    /**
     * The plan's lines of one document, before tax.
     *
     * @param issued the document's day, null while it is a draft
     * @param discarded the day on which the draft was let go, or null
     */
    record Asked(
            boolean credit,
            @Nullable LocalDate issued,
            @Nullable LocalDate discarded,
            long minor) {

        boolean issuedOn(LocalDate day) {
            return issued != null && !issued.isAfter(day);
        }

        boolean stands(LocalDate day) {
            return credit ? issuedOn(day) : discarded == null || discarded.isAfter(day);
        }

        long signed() {
            return credit ? -minor : minor;
        }
    }

    boolean endedOn(LocalDate day) {
        return ended != null && !ended.isAfter(day);
    }

    /** Asked for by documents that bear that day or an earlier one, less what credit notes gave back. */
    Money invoiced(LocalDate day, Currency currency) {
        return sum(asked.stream().filter(one -> one.issuedOn(day)), currency);
    }

    Money givenBack(LocalDate day, Currency currency) {
        return sum(asked.stream().filter(one -> one.credit() && one.issuedOn(day)), currency)
                .negated();
    }

    /** The last settlement by the end of that day. */
    Optional<Settlement.Settled> settledOn(LocalDate day) {
        return settled.reversed().stream()
                .filter(one -> !one.day().isAfter(day))
                .findFirst();
    }

    /** Earned at the end of that day; of what a settlement keeps no more than what is still asked for. */
    Money earned(LocalDate day, Currency currency) {
        Money promises = earnedByPromises(day, currency);
        return settledOn(day)
                .map(one -> smaller(one.kept(), endedOn(day) ? standing(day, currency) : promises))
                .orElse(promises);
    }

    /** When it has ended: visits done by the day of the end, days of standing ready before it. */
    private Money earnedByPromises(LocalDate day, Currency currency) {
        LocalDate last = ended;
        Recognition plan = recognition(eve(day), currency);
        if (last == null || last.isAfter(day)) {
            return plan.earnedBefore(day.plusDays(1), done);
        }
        LocalDate next = last.plusDays(1);
        Money visits = plan.earnedBefore(next, done).minus(plan.earnedBefore(next, Map.of()));
        return plan.earnedBefore(last, Map.of()).plus(visits);
    }

    /** As it stands when it ends on the day, for what each way of refunding keeps; what is billed and paid is told apart. */
    Cancelled endingOn(LocalDate day, Currency currency) {
        Money nought = Money.zero(currency);
        LocalDate before = day.minusDays(1);
        LocalDate known =
                settled.isEmpty() ? before : earlier(before, firstSettled().minusDays(1));
        return new Cancelled(recognition(known, currency), day, done, nought, List.of(), nought);
    }

    /** A discarded draft lessens the price of an agreement that holds; what falls with its end or its settlement does not. */
    private LocalDate eve(LocalDate day) {
        LocalDate known = day;
        if (ended != null) {
            known = earlier(known, ended.minusDays(1));
        }
        return settled.isEmpty() ? known : earlier(known, firstSettled().minusDays(1));
    }

    private LocalDate firstSettled() {
        return settled.getFirst().day();
    }

    private Recognition recognition(LocalDate known, Currency currency) {
        return Recognition.of(standing(known, currency).aboveNought(), head.term(), promised, List.of());
    }

    private Money standing(LocalDate day, Currency currency) {
        return sum(asked.stream().filter(one -> one.stands(day)), currency);
    }

    private static Money smaller(Money one, Money other) {
        return one.compareTo(other) < 0 ? one : other;
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }

    private static Money sum(Stream<Asked> asked, Currency currency) {
        return new Money(asked.mapToLong(Asked::signed).sum(), currency);
    }

    /** The days by promise, for the promises that are there. */
    static Map<String, LocalDate> known(Map<String, LocalDate> done, List<Promised> promised) {
        Map<String, LocalDate> known = new HashMap<>(done);
        known.keySet().retainAll(promised.stream().map(Promised::name).toList());
        return Map.copyOf(known);
    }
}
