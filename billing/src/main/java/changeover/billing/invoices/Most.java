package changeover.billing.invoices;

import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import java.math.BigDecimal;

/** No line, and no document, asks for more than any field of a page takes. */
public final class Most {

    /** In the smallest coins. */
    public static final long MINOR = Money.MOST.movePointRight(2).longValueExact();

    private Most() {}

    public static boolean beyond(Money amount) {
        return amount.minor() > MINOR;
    }

    /** A price times a quantity; refused at the field of its price when it is beyond. */
    static Money line(Money price, BigDecimal quantity, String at) {
        Money gross = price.times(quantity);
        if (beyond(gross)) {
            throw Refusal.of("invoice.line-too-much").at(at).thrown();
        }
        return gross;
    }

    /** Refused, at no field, when all its lines come to more. */
    public static void total(Money sum) {
        if (beyond(sum)) {
            throw Refusal.of("invoice.lines-too-much").thrown();
        }
    }
}
