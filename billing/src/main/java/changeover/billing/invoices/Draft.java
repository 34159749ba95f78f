package changeover.billing.invoices;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A document in the making: whom it asks, for what, and from which day it may be issued.
 *
 * @param awaitsFirstVisit nothing may be asked before the agreement's first visit is closed
 * @param dueDays days from issue until it is to be paid
 * @param reason why a credit note was made, null on others
 */
public record Draft(
        DocumentKind kind,
        @Nullable UUID creditsId,
        UUID customerId,
        @Nullable UUID homeId,
        @Nullable UUID agreementId,
        @Nullable UUID visitId,
        @Nullable Integer visitVersion,
        @Nullable Integer instalment,
        @Nullable Integer instalments,
        String language,
        Currency currency,
        LocalDate mayIssueFrom,
        boolean awaitsFirstVisit,
        @Nullable String purchaseOrder,
        int dueDays,
        @Nullable Wording reason,
        List<DraftLine> lines) {

    public Money subtotal() {
        return Money.sum(lines.stream().map(DraftLine::net).toList(), currency);
    }
}
