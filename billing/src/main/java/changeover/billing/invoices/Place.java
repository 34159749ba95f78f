package changeover.billing.invoices;

import changeover.billing.tax.PropertyUse;
import changeover.billing.tax.TaxQuestion;

/** A home as issuing sees it: the address that is printed, and the use that decides a tax. */
record Place(WorkPlace work, PropertyUse property) {

    String taxRegion() {
        return TaxQuestion.region(work.country(), work.region());
    }
}
