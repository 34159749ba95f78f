package changeover.billing.invoices;

import changeover.billing.pricing.Charge.Covered;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One line of a document in the making; wording and price are copied now, whatever the price book says later.
 *
 * @param visitVersion of the visit's closure, 1 unless it was amended
 * @param day the day of the work, or the first day of what a plan's line pays for
 * @param kind plan, labour, part, travel, deposit or other
 * @param unit UN/ECE Recommendation 20
 * @param unitPrice null while the price book has none; such a document is not issued
 */
public record DraftLine(
        @Nullable UUID homeId,
        @Nullable UUID agreementId,
        @Nullable UUID visitId,
        @Nullable Integer visitVersion,
        LocalDate day,
        String kind,
        @Nullable String itemCode,
        @Nullable String partKind,
        Covered covered,
        Work work,
        ContractForm form,
        Wording words,
        Wording why,
        BigDecimal quantity,
        String unit,
        @Nullable Money unitPrice,
        BigDecimal discountPercent,
        Money discount,
        Money net) {}
