package changeover.billing.estimates;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A tax as the estimate says it, by the table of the day it was offered.
 *
 * @param registration the number under which it is collected
 * @param lines the positions of the lines that bear it
 */
public record EstimateTax(
        int position,
        String code,
        Wording label,
        BigDecimal percent,
        @Nullable String registration,
        Money base,
        Money amount,
        List<Integer> lines,
        String source) {

    public EstimateTax {
        lines = List.copyOf(lines);
    }
}
