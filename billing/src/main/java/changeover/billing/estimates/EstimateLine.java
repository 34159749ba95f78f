package changeover.billing.estimates;

import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A line of an estimate, amounts before taxes.
 *
 * @param kind part, labour, travel or other
 * @param coverage included, discounted or billable
 * @param unit UN/ECE Recommendation 20
 * @param unitPrice null while the price book has none; such an estimate is not offered
 */
public record EstimateLine(
        int position,
        String kind,
        @Nullable String item,
        String coverage,
        Wording words,
        Wording why,
        BigDecimal quantity,
        String unit,
        @Nullable Money unitPrice,
        Money discount,
        Money net,
        Work work) {

    public boolean included() {
        return coverage.equals("included");
    }
}
