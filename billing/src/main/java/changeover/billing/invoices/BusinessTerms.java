package changeover.billing.invoices;

import changeover.contracts.words.Wording;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What an electronic invoice says beyond what is printed: its kind by number, the payer's reference, the terms in words, and
 * for lines that bear no tax at all the category and the reason. EN 16931-1:2017 calls these BT-3, BT-10, BT-20, BT-151 and
 * BT-120.
 *
 * @param typeCode of UNTDID 1001: 380 invoice, 386 prepayment invoice, 381 credit note
 * @param terms null on a credit note, which asks for nothing
 * @param untaxed why some lines bear no tax; null where each has one, be it at nought
 */
record BusinessTerms(
        String typeCode,
        @Nullable String buyerReference,
        @Nullable Wording terms,
        @Nullable String untaxedCategory,
        @Nullable Wording untaxed) {

    /** Not subject to tax (UNCL5305), for who is not registered. */
    private static final String NOT_SUBJECT = "O";

    private static final Wording SMALL_SUPPLIER =
            new Wording("Small supplier, not registered for taxes", "Petit fournisseur, non inscrit aux taxes");

    static BusinessTerms of(Waiting draft, List<PrintedTax> taxes) {
        boolean taxed = everyLineHasATax(draft, taxes);
        return new BusinessTerms(
                draft.kind().typeCode(),
                draft.buyerReference(),
                draft.kind() == DocumentKind.CREDIT ? null : terms(draft.dueDays()),
                taxed ? null : NOT_SUBJECT,
                taxed ? null : SMALL_SUPPLIER);
    }

    private static Wording terms(int days) {
        return switch (days) {
            case 0 -> new Wording("Payable on receipt", "Payable à la réception");
            case 1 -> new Wording("Payable within one day", "Payable d’ici un jour");
            default -> new Wording("Payable within " + days + " days", "Payable d’ici " + days + " jours");
        };
    }

    /** A place without a tax is never issued, so only a small supplier's lines have none. */
    private static boolean everyLineHasATax(Waiting draft, List<PrintedTax> taxes) {
        return draft.lines().stream()
                .allMatch(line -> taxes.stream().anyMatch(tax -> tax.lines().contains(line.position())));
    }
}
