package changeover.billing.invoices;

import changeover.billing.pricing.Charge;
import changeover.billing.pricing.Charges;
import changeover.billing.pricing.ClosedVisit;
import changeover.billing.pricing.NoAccessFee;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.VisitKind;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.Work;
import changeover.scheduling.closeout.VisitClosed;
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

    Draft draft() {
        return draft(lines());
    }

    /** The fee of a trip that ended at a closed door; empty where none is asked. */
    Optional<Draft> withoutAccess() {
        VisitKind kind = VisitKind.of(closed.visitKind());
        Work work = kind == VisitKind.PLAN ? Work.MAINTENANCE : Work.REPAIR;
        return NoAccessFee.of(closed.day(), kind, prices, currency).map(fee -> draft(List.of(line(fee, work))));
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

    List<DraftLine> lines() {
        VisitKind kind = VisitKind.of(closed.visitKind());
        int extra = kind == VisitKind.PLAN
                ? Math.min(closed.extraMinutes(), closed.minutesOnSite())
                : closed.minutesOnSite();
        ClosedVisit visit = new ClosedVisit(
                closed.day(),
                kind,
                closed.minutesOnSite() - extra,
                extra,
                facts.outside(),
                facts.parts(),
                facts.zone());
        Work work = kind == VisitKind.PLAN ? Work.MAINTENANCE : Work.REPAIR;
        return Charges.of(visit, facts.coverage(), prices, currency).stream()
                .map(charge -> line(charge, work))
                .toList();
    }

    private DraftLine line(Charge charge, Work work) {
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
                ContractForm.SEPARATE,
                charge.words(),
                charge.why(),
                charge.quantity(),
                charge.unit(),
                charge.unitPrice(),
                charge.discountPercent(),
                charge.discount(),
                charge.net());
    }
}
