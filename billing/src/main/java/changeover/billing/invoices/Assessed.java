package changeover.billing.invoices;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.List;

/** A draft with its taxes computed: all that is missing is its number. */
record Assessed(
        Waiting draft,
        LocalDate day,
        LocalDate taxDay,
        Seller seller,
        Buyer buyer,
        List<WorkPlace> works,
        List<PrintedTax> taxes) {

    long subtotalMinor() {
        return draft.subtotalMinor();
    }

    long taxMinor() {
        return taxes.stream().mapToLong(PrintedTax::amountMinor).sum();
    }

    long totalMinor() {
        return Math.addExact(subtotalMinor(), taxMinor());
    }

    /** What the customer owes more by it: a credit note's is below nought. */
    Money signedTotal() {
        long total = totalMinor();
        return new Money(draft.kind() == DocumentKind.CREDIT ? -total : total, draft.currency());
    }

    LocalDate dueDay() {
        return day.plusDays(draft.dueDays());
    }
}
