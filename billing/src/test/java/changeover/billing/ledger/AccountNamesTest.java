package changeover.billing.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.tax.TaxConfirmation;
import changeover.billing.tax.TaxTables;
import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Wording;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** The books name a tax as documents do, in both languages, and never by a code. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class AccountNamesTest {

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    TaxTables tables;

    @Inject
    AccountNames names;

    private void issue(UUID customer, String country, String region) {
        UUID home = business.home(customer, country, region);
        UUID draft =
                drafts.write(List.of(SomeDrafts.plan(customer, home, "249.00"))).getFirst();
        invoices.issue(draft, SomeDrafts.DAY);
    }

    private void read(String row, String number) {
        tables.confirm(row, new TaxConfirmation.Facts("The tax office's page", LocalDate.of(2026, 1, 5), number));
    }

    @Test
    void taxes_are_named_by_their_label_their_number_or_their_place() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            read("US-NY ny_sales 2011-03-01 any any any", null);
            read("CA-BC gst 2008-01-01 any any any", null);
            read("CA-BC pst 2013-04-01 any any any", null);
            issue(customer, "CA", "QC");
            issue(customer, "US", "NY");
            issue(customer, "CA", "BC");
            AccountNames.Names said = names.now();
            assertEquals(
                    new Wording("GST 123456789 RT0001", "TPS 123456789 RT0001"), said.of("tax gst 123456789 RT0001"));
            assertEquals(
                    new Wording("NY sales tax 8.875%, New York", "Taxe de vente NY 8,875 %, New York"),
                    said.of("tax ny_sales US-NY"));
            assertEquals(new Wording("PST, British Columbia", "TVP, Colombie-Britannique"), said.of("tax pst CA-BC"));
            assertEquals(new Wording("Cash", "Comptant"), said.of("cash"));
        });
    }
}
