package changeover.billing.invoices;

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

    LocalDate dueDay() {
        return day.plusDays(draft.dueDays());
    }
}
