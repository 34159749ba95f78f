package changeover.billing.tax;

import changeover.contracts.money.Money;
import java.util.List;

/**
 * One tax on one document.
 *
 * @param base the sum of the lines it is computed on
 * @param lines the positions of those lines
 */
public record TaxLine(Tax tax, Money base, Money amount, List<Integer> lines) {}
