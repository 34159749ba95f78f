package changeover.billing.ledger;

import changeover.billing.tax.ChargedTax;
import changeover.billing.tax.TaxLine;
import changeover.contracts.money.Money;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A cancelled plan is paid back as the law of the place says; every way is reckoned and shown before anything is posted.
 * Never below nought, never more than was paid.
 *
 * @param chosen the one that the policy picks
 * @param ways all of them
 */
public record Refund(RefundPolicy policy, Settled chosen, List<Settled> ways) {

    /** What of one tax goes back. */
    public record TaxBack(TaxLine charged, Money amount) {}

    /**
     * One way worked through.
     *
     * @param kept what of the price is kept
     * @param credit the credit note before tax: what was billed beyond that
     * @param taxes what of each tax goes back
     * @param creditTotal the credit note with its taxes
     * @param giveBack what is paid out: what was paid beyond what is owed then
     * @param stillOwed what the customer still owes of what was billed
     * @param stillToBill what is kept and was never billed, before tax
     */
    public record Settled(
            RefundWay way,
            Money kept,
            Money credit,
            List<TaxBack> taxes,
            Money creditTotal,
            Money giveBack,
            Money stillOwed,
            Money stillToBill) {}

    public static Refund of(Cancelled cancelled, RefundPolicy policy) {
        List<Settled> ways = Arrays.stream(RefundWay.values())
                .map(way -> settled(cancelled, way))
                .toList();
        Settled chosen = ways.stream()
                .filter(settled -> policy.ways().contains(settled.way()))
                .min(Comparator.comparing(Settled::kept))
                .orElseThrow();
        return new Refund(policy, chosen, ways);
    }

    private static Settled settled(Cancelled cancelled, RefundWay way) {
        Money kept = cancelled.kept(way);
        Money credit = cancelled.billed().minus(kept).aboveNought();
        Money nought = Money.zero(credit.currency());
        List<TaxBack> taxes = cancelled.taxes().stream()
                .map(line -> new TaxBack(
                        line, new ChargedTax(line.tax().percent(), line.base(), line.amount()).back(credit, nought)))
                .toList();
        Money total = Money.sum(taxes.stream().map(TaxBack::amount).toList(), credit.currency())
                .plus(credit);
        Money owed = cancelled.billedWithTax().minus(total);
        return new Settled(
                way,
                kept,
                credit,
                taxes,
                total,
                cancelled.paid().minus(owed).aboveNought(),
                owed.minus(cancelled.paid()).aboveNought(),
                kept.minus(cancelled.billed()).aboveNought());
    }
}
