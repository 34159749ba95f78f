package changeover.billing.invoices;

import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A draft as a person may change it.
 *
 * @param version to be sent back with a change
 * @param visitChanged the visit was amended after a person changed its lines, and says otherwise now
 * @param takenOff lines that the product reckoned and a person took off
 */
public record DraftByHand(
        UUID id,
        int version,
        DocumentKind kind,
        Locale language,
        Currency currency,
        LocalDate mayIssueFrom,
        @Nullable String purchaseOrder,
        int dueDays,
        boolean visitChanged,
        List<Line> lines,
        List<Wording> takenOff) {

    /**
     * @param words in the language of the document
     * @param french as a French paper says it
     * @param unitPrice null while the price book has none, and for what the plan includes
     * @param work, form decide its taxes, with the place
     * @param visitChanged the amended visit now says otherwise than when the line was changed by hand
     */
    public record Line(
            UUID id,
            int position,
            String words,
            BigDecimal quantity,
            String unit,
            @Nullable Money unitPrice,
            boolean included,
            boolean byHand,
            boolean visitChanged,
            Work work,
            ContractForm form,
            String french) {}
}
