package changeover.billing.tax;

import changeover.contracts.money.Money;
import java.math.BigDecimal;

/**
 * What goes back of a tax is what was charged less what is due on the amount kept (the cumulative method): all credit notes
 * together never give back more than was charged, nor leave a cent of tax on nothing.
 *
 * @param base what it was charged on
 * @param amount what was charged
 */
public record ChargedTax(BigDecimal percent, Money base, Money amount) {

    /**
     * @param baseBack what is given back before tax, this time and before
     * @param taxBackBefore what of this tax went back before
     */
    public Money back(Money baseBack, Money taxBackBefore) {
        return amount.minus(base.minus(baseBack).percent(percent)).minus(taxBackBefore);
    }
}
