package changeover.billing.invoices;

import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A draft with everything that issuing it copies. */
record Waiting(
        UUID id,
        DocumentKind kind,
        @Nullable UUID creditsId,
        UUID customerId,
        @Nullable UUID homeId,
        @Nullable UUID agreementId,
        @Nullable UUID visitId,
        @Nullable Integer instalment,
        String language,
        Currency currency,
        LocalDate mayIssueFrom,
        boolean awaitsFirstVisit,
        @Nullable String purchaseOrder,
        int dueDays,
        @Nullable Wording reason,
        @Nullable String label,
        boolean discarded,
        boolean joint,
        @Nullable String buyerReference,
        Buyer buyer,
        List<LineRow> lines) {

    long subtotalMinor() {
        return lines.stream().mapToLong(LineRow::netMinor).sum();
    }

    Waiting withLines(@Nullable UUID newHome, List<LineRow> newLines) {
        return new Waiting(
                id,
                kind,
                creditsId,
                customerId,
                newHome,
                agreementId,
                visitId,
                instalment,
                language,
                currency,
                mayIssueFrom,
                awaitsFirstVisit,
                purchaseOrder,
                dueDays,
                reason,
                label,
                discarded,
                joint,
                buyerReference,
                buyer,
                newLines);
    }
}
