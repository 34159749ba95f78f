package changeover.billing.invoices;

import changeover.billing.tax.TaxTables;
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
    TaxTables tables;

    Assessment on(LocalDate day) {
        return new Assessment(seller(), tables.current(), day);
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
