package changeover.billing.invoices;

import changeover.billing.pricing.Charge.Covered;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A visit that does accepted work is charged for what it tells, taxed as that work was agreed, and for each accepted line that no
 * visit tells. The tasks that a plan promised stay what they are.
 */
record AgreedWork(PromisedLines.Agreed agreed, boolean planned) {

    Draft on(Draft draft) {
        List<DraftLine> lines = new ArrayList<>();
        for (DraftLine line : draft.lines()) {
            lines.add(planned ? line : as(line, agreed.work(), agreed.form()));
        }
        for (PromisedLines.Line line : agreed.lines()) {
            lines.add(promised(draft, line));
        }
        return new Draft(
                draft.kind(),
                draft.creditsId(),
                draft.customerId(),
                draft.homeId(),
                draft.agreementId(),
                draft.visitId(),
                draft.visitVersion(),
                draft.instalment(),
                draft.instalments(),
                draft.language(),
                draft.currency(),
                draft.mayIssueFrom(),
                draft.awaitsFirstVisit(),
                draft.purchaseOrder(),
                draft.dueDays(),
                draft.reason(),
                lines);
    }

    private static DraftLine as(DraftLine line, Work work, ContractForm form) {
        return new DraftLine(
                line.homeId(),
                line.agreementId(),
                line.visitId(),
                line.visitVersion(),
                line.day(),
                line.kind(),
                line.itemCode(),
                line.partKind(),
                line.covered(),
                work,
                form,
                line.words(),
                line.why(),
                line.quantity(),
                line.unit(),
                line.unitPrice(),
                line.discountPercent(),
                line.discount(),
                line.net());
    }

    private DraftLine promised(Draft draft, PromisedLines.Line line) {
        return new DraftLine(
                draft.homeId(),
                null,
                draft.visitId(),
                draft.visitVersion(),
                draft.mayIssueFrom(),
                "other",
                line.item(),
                null,
                Covered.BILLABLE,
                line.work(),
                agreed.form(),
                line.words(),
                line.why(),
                line.quantity(),
                line.unit(),
                line.unitPrice(),
                BigDecimal.ZERO,
                Money.zero(draft.currency()),
                line.unitPrice().times(line.quantity()));
    }
}
