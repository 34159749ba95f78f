package changeover.billing.tax;

import changeover.contracts.money.Money;

/**
 * Of a debt that is given up, each tax is given up in the part that the debt is of the whole: tax × debt / total, half-up
 * (Excise Tax Act, s. 231: A × B / C, from memory). The share is reckoned on all that was given up of the document and lessened
 * by the shares before, as with {@link ChargedTax}: all shares together never are more than the tax, and the last takes the rest.
 *
 * @param total of the document, taxes in, less what credit notes gave back
 */
public record BadDebt(Money total) {

    /**
     * The share of this time; below nought when a part is taken back.
     *
     * @param charged the tax, or what it lies on, less what credit notes gave back
     * @param given all that is given up of the document, this time and before
     * @param before the shares before
     */
    public Money share(Money charged, Money given, Money before) {
        Money all = total.isZero() ? Money.zero(total.currency()) : charged.fraction(given.minor(), total.minor());
        return all.minus(before);
    }
}
