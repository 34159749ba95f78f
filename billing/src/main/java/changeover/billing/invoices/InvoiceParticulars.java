package changeover.billing.invoices;

import changeover.billing.tax.Tax;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Place;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Set;

/**
 * What a Canadian document must print grows with its total, taxes included: under 100 dollars who, when and how much; from
 * 100 the registration numbers and the taxes; from 500 the recipient, the terms and what each supply was. A contractor of
 * Quebec prints the licence on every one.
 *
 * <p>Sources: Input Tax Credit Information (GST/HST) Regulations, SOR/91-45, s. 3, with the amounts of 100 and 500 that hold
 * since 2021-04-20 (secondary); Building Act (CQLR c. B-1.1), s. 57.1, for the licence.
 */
public final class InvoiceParticulars {

    private static final long HUNDRED = 100;
    private static final long FIVE_HUNDRED = 500;

    private InvoiceParticulars() {}

    /** One thing that a document must show. */
    public enum Particular {
        SELLER_NAME,
        DAY,
        TOTAL,
        REGISTRATION_NUMBERS,
        TAXES_BY_LINE,
        BUYER_NAME,
        TERMS,
        DESCRIPTIONS,
        LICENCE
    }

    /** @param total taxes included */
    public static Set<Particular> of(Money total, Seller seller) {
        Set<Particular> must = EnumSet.of(Particular.SELLER_NAME, Particular.DAY, Particular.TOTAL);
        Money hundred = whole(HUNDRED, total);
        if (total.compareTo(hundred) >= 0 && !seller.smallSupplier()) {
            must.add(Particular.REGISTRATION_NUMBERS);
            must.add(Particular.TAXES_BY_LINE);
        }
        if (total.compareTo(whole(FIVE_HUNDRED, total)) >= 0) {
            must.add(Particular.BUYER_NAME);
            must.add(Particular.TERMS);
            must.add(Particular.DESCRIPTIONS);
        }
        if (seller.licence() != null && Place.isQuebec(seller.country(), seller.region())) {
            must.add(Particular.LICENCE);
        }
        return must;
    }

    /** What the document ought to show and has no facts for; nothing is well. */
    public static Set<Particular> missing(InvoiceView view) {
        Set<Particular> missing = EnumSet.noneOf(Particular.class);
        for (Particular particular : of(view.total(), view.seller())) {
            boolean has = switch (particular) {
                case SELLER_NAME -> !view.seller().name().isBlank();
                case DAY, TOTAL, TERMS -> true;
                case REGISTRATION_NUMBERS ->
                    view.taxes().stream()
                            .filter(tax -> !tax.amount().isZero() && Tax.isUnderANumber(tax.code()))
                            .allMatch(tax -> tax.registration() != null);
                case TAXES_BY_LINE -> !view.taxes().isEmpty();
                case BUYER_NAME -> !view.buyer().name().isBlank();
                case DESCRIPTIONS ->
                    view.lines().stream()
                            .noneMatch(line -> line.words().in(view.language()).isBlank());
                case LICENCE -> view.seller().licence() != null;
            };
            if (!has) {
                missing.add(particular);
            }
        }
        return missing;
    }

    private static Money whole(long units, Money like) {
        return Money.of(BigDecimal.valueOf(units), like.currency());
    }
}
