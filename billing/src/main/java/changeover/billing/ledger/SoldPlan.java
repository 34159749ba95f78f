package changeover.billing.ledger;

import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * An accepted agreement with all that was asked for it and done for it, to be looked at on any day.
 *
 * <p>Its price is what was asked and is still to be asked, before tax, less what was given back or let go. When it has ended,
 * nothing more is earned by days or visits; once a credit note settles it, what the business keeps is earned.
 *
 * @param done days by the promise's name
 * @param ended the first day on which it no longer held, or null
 */
record SoldPlan(
        Head head,
        List<Promised> promised,
        EarnedOn.Basis basis,
        Map<String, LocalDate> done,
        List<Asked> asked,
        @Nullable LocalDate ended) {

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

    /** Earned at the end of that day. */
    Money earned(LocalDate day, Currency currency) {
        LocalDate last = ended;
        if (last == null || last.isAfter(day)) {
            return recognition(day, false, currency).earnedBefore(day.plusDays(1), done);
        }
        LocalDate eve = last.minusDays(1);
        boolean settled = asked.stream().anyMatch(one -> one.credit() && one.issuedOn(day) && !one.issuedOn(eve));
        if (settled) {
            return invoiced(day, currency);
        }
        Recognition plan = recognition(day, true, currency);
        LocalDate next = last.plusDays(1);
        Money visits = plan.earnedBefore(next, done).minus(plan.earnedBefore(next, Map.of()));
        return plan.earnedBefore(last, Map.of()).plus(visits);
    }

    /** As it stands when it ends on the day, for what each way of refunding keeps; what is billed and paid is told apart. */
    Cancelled endingOn(LocalDate day, Currency currency) {
        LocalDate eve = day.minusDays(1);
        Money price = sum(asked.stream().filter(one -> one.stands(eve)), currency);
        Money nought = Money.zero(currency);
        return new Cancelled(
                Recognition.of(price.aboveNought(), head.term(), promised, List.of()),
                day,
                done,
                nought,
                List.of(),
                nought);
    }

    /** Before the agreement ended a discarded draft lessens its price; drafts that fell with it do not. */
    private Recognition recognition(LocalDate day, boolean over, Currency currency) {
        LocalDate last = ended;
        LocalDate known = over && last != null ? last.minusDays(1) : day;
        Money price = sum(asked.stream().filter(one -> one.stands(known)), currency);
        return Recognition.of(price.aboveNought(), head.term(), promised, List.of());
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
