package changeover.billing.invoices;

import changeover.billing.pricing.Charge;
import changeover.billing.pricing.Charge.Covered;
import changeover.billing.pricing.Charges;
import changeover.billing.pricing.ClosedVisit;
import changeover.billing.pricing.NoAccessFee;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.VisitKind;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.scheduling.closeout.VisitClosed;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/**
 * A closed visit's draft: every part and minute on a line, those included too, so that the customer reads what the plan
 * gave.
 *
 * @param version of the closure, 1 unless it was amended
 */
record VisitCharged(
        VisitClosed closed, int version, VisitFacts facts, PriceBook prices, Currency currency, int dueDays) {

    /**
     * With what was accepted for its work: what it tells is taxed as that work was agreed, and each accepted line that no visit
     * tells follows. The tasks that a plan promised stay what they are.
     */
    Draft draft(Optional<PromisedLines.Agreed> accepted) {
        List<DraftLine> lines = new ArrayList<>(lines(accepted));
        accepted.ifPresent(agreed -> agreed.lines().forEach(line -> lines.add(line(line))));
        return draft(lines);
    }

    /** The fee of a trip that ended at a closed door; empty where none is asked. */
    Optional<Draft> withoutAccess() {
        return NoAccessFee.of(closed.day(), kind(), prices, currency)
                .map(fee -> draft(List.of(line(fee, usual(), ContractForm.SEPARATE))));
    }

    private Draft draft(List<DraftLine> lines) {
        return new Draft(
                DocumentKind.VISIT,
                null,
                facts.payerId(),
                closed.homeId(),
                null,
                closed.visitId(),
                version,
                null,
                null,
                facts.language(),
                currency,
                closed.day(),
                false,
                facts.purchaseOrder(),
                dueDays,
                null,
                lines);
    }

    private VisitKind kind() {
        return VisitKind.of(closed.visitKind());
    }

    private Work usual() {
        return kind() == VisitKind.PLAN ? Work.MAINTENANCE : Work.REPAIR;
    }

    private List<DraftLine> lines(Optional<PromisedLines.Agreed> accepted) {
        VisitKind kind = kind();
        int extra = kind == VisitKind.PLAN
                ? Math.min(closed.extraMinutes(), closed.minutesOnSite())
                : closed.minutesOnSite();
        ClosedVisit visit = new ClosedVisit(
                closed.day(),
                kind,
                facts.work().people(),
                closed.minutesOnSite() - extra,
                extra,
                otherMinutes(),
                facts.outside(),
                facts.parts(),
                facts.zone());
        Optional<PromisedLines.Agreed> agreed = accepted.filter(one -> kind != VisitKind.PLAN);
        Work work = agreed.map(PromisedLines.Agreed::work).orElse(usual());
        ContractForm form = agreed.map(PromisedLines.Agreed::form).orElse(ContractForm.SEPARATE);
        return Charges.of(visit, facts.coverage(), prices, currency).stream()
                .map(charge -> line(charge, work, form))
                .toList();
    }

    /**
     * Beside a part under guarantee: what whoever was there told as beyond the visit, and the tasks that it had anyway. Of a plan's
     * visit the minutes beyond its tasks are those of the part, since nothing tells them apart.
     */
    private int otherMinutes() {
        return kind() == VisitKind.PLAN
                ? 0
                : closed.extraMinutes() + facts.work().taskMinutes();
    }

    private DraftLine line(Charge charge, Work work, ContractForm form) {
        return new DraftLine(
                closed.homeId(),
                facts.agreementId(),
                closed.visitId(),
                version,
                closed.day(),
                charge.kind().code(),
                charge.item(),
                charge.partKind(),
                charge.covered(),
                work,
                form,
                charge.words(),
                charge.why(),
                charge.quantity(),
                charge.unit(),
                charge.unitPrice(),
                charge.discountPercent(),
                charge.discount(),
                charge.net());
    }

    private DraftLine line(PromisedLines.Line line) {
        return new DraftLine(
                closed.homeId(),
                null,
                closed.visitId(),
                version,
                closed.day(),
                "other",
                line.item(),
                null,
                Covered.BILLABLE,
                line.work(),
                line.form(),
                line.words(),
                line.why(),
                line.quantity(),
                line.unit(),
                line.unitPrice(),
                BigDecimal.ZERO,
                Money.zero(currency),
                line.unitPrice().times(line.quantity()));
    }
}
