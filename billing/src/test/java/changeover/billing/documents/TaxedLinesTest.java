package changeover.billing.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Draft;
import changeover.billing.invoices.DraftLine;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.InvoiceView;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.tax.Work;
import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A line that is outside of a tax or exempt from it is not printed as taxed, though its tax's row at no percent names it. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class TaxedLinesTest {

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    InvoiceSheets sheets;

    /** A shop in Texas: 249.00 of scheduled maintenance and 100.00 of repair, 8.25 of it at 8.25 %; 357.25 in all. */
    @Test
    void scheduled_maintenance_is_not_taxed_beside_a_repair_that_is() {
        business.in(business.quebec(), () -> {
            business.confirms("US-TX tx_sales 2011-01-01 commercial repair any");
            check("TX", "357.25", "249.00 not, 100.00 taxed", Work.MAINTENANCE, Work.REPAIR);
        });
    }

    /** A capital improvement in New York, exempt, and 100.00 of maintenance: 8.875 %, half-up 8.88; 357.88 in all. */
    @Test
    void a_capital_improvement_is_not_taxed_beside_maintenance_that_is() {
        business.in(business.quebec(), () -> {
            business.confirms("US-NY ny_sales 2011-03-01 any any any");
            business.confirms("US-NY ny_sales 2011-03-01 any installation any");
            check("NY", "357.88", "249.00 not, 100.00 taxed", Work.INSTALLATION, Work.MAINTENANCE);
        });
    }

    private void check(String region, String total, String expected, Work first, Work second) {
        UUID customer = business.customer("Ida Roe");
        UUID home = business.home(customer, "US", region);
        business.execute("update home set property_use = 'commercial' where id = '" + home + "'");
        Draft draft = SomeDrafts.visit(SomeDrafts.DAY, customer, home, first, "249.00");
        DraftLine more = SomeDrafts.visit(SomeDrafts.DAY, customer, home, second, "100.00")
                .lines()
                .getFirst();
        UUID id = drafts.write(List.of(new Draft(
                        draft.kind(),
                        null,
                        customer,
                        home,
                        null,
                        null,
                        null,
                        null,
                        null,
                        "en",
                        draft.currency(),
                        SomeDrafts.DAY,
                        false,
                        null,
                        30,
                        null,
                        List.of(draft.lines().getFirst(), more))))
                .getFirst();
        invoices.issue(id, SomeDrafts.DAY);
        InvoiceView view = invoices.view(id).orElseThrow();
        assertEquals(total, view.total().decimal());
        InvoiceSheet sheet = sheets.of(view);
        assertEquals(
                expected,
                sheet.lines().stream()
                        .map(line -> line.amount().decimal() + (line.taxed() ? " taxed" : " not"))
                        .collect(Collectors.joining(", ")));
        String text = Judged.text(InvoicePdf.bytes(sheet));
        assertEquals(1, text.split(", no tax", -1).length - 1, text);
    }
}
