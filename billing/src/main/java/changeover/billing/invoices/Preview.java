package changeover.billing.invoices;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Locales;

/** A draft as it would be printed. */
final class Preview {

    private Preview() {}

    /** @param paid of it so far */
    static InvoiceView of(Assessed one, Money paid) {
        Waiting draft = one.draft();
        Money total = new Money(one.totalMinor(), draft.currency());
        return new InvoiceView(
                draft.id(),
                draft.kind(),
                null,
                draft.creditsId(),
                null,
                one.day(),
                one.taxDay(),
                one.dueDay(),
                draft.customerId(),
                draft.homeId(),
                draft.agreementId(),
                draft.visitId(),
                Locales.of(draft.language()),
                draft.currency(),
                one.seller(),
                one.buyer(),
                one.works(),
                draft.purchaseOrder(),
                draft.buyerReference(),
                draft.reason(),
                BusinessTerms.of(draft, one.taxes()).untaxed(),
                draft.lines().stream().map(line -> line.view(draft.currency())).toList(),
                one.taxes().stream().map(tax -> tax.view(draft.currency())).toList(),
                new Money(one.subtotalMinor(), draft.currency()),
                new Money(one.taxMinor(), draft.currency()),
                total,
                paid.compareTo(total) < 0 ? paid : total.aboveNought());
    }
}
