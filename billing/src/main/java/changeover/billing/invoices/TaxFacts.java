package changeover.billing.invoices;

import changeover.billing.tax.OwnTaxes;
import changeover.billing.tax.ShippedTaxes;
import changeover.billing.tax.TaxTable;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.BusinessProfile;
import changeover.contracts.tenants.Businesses;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;

/** The business and its tax table as they are today: what a document issued now is judged by. */
@ApplicationScoped
class TaxFacts {

    @Inject
    Businesses businesses;

    @Inject
    OwnTaxes ownTaxes;

    Assessment on(LocalDate day) {
        return new Assessment(seller(), new TaxTable(ShippedTaxes.rows(), ownTaxes.rows()), day);
    }

    private Seller seller() {
        Business business = businesses.current();
        BusinessProfile.Facts facts = businesses.profile().facts();
        return new Seller(
                business.name(),
                facts.street(),
                facts.city(),
                facts.region(),
                facts.postal(),
                facts.country(),
                facts.phone(),
                facts.email(),
                facts.licence(),
                facts.gstNumber(),
                facts.qstNumber(),
                facts.smallSupplier());
    }
}
