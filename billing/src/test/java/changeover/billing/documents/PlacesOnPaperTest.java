package changeover.billing.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** The same plan on the paper of each place, above and below the sums from which the law asks for more. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PlacesOnPaperTest {

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    DocumentsToMake toMake;

    @Test
    void quebec_in_both_languages_says_each_tax_with_its_number_and_the_licence() {
        UUID tenant = business.quebec();
        business.in(tenant, () -> business.execute("update business_profile set licence = '5555-0123-01'"));
        for (String language : List.of("fr", "en")) {
            String paper = paper(tenant, "paper-quebec-" + language, language, "CA", "QC", "549.00");
            says(paper, "123456789 RT0001", "1234567890 TQ0001", "5555-0123-01", "Ida Roe", "12, rue des Pins");
            says(paper, language.equals("fr") ? "TVQ/QST 9,975 %" : "QST 9.975", "Dept. 12");
            assertFalse(paper.contains("14,975") || paper.contains("14.975"), paper);
        }
        String both = paper(tenant, "paper-quebec-french-first", "en", "CA", "QC", "249.00");
        assertTrue(
                both.indexOf("Facture") >= 0 && both.indexOf("Facture") < both.indexOf("Invoice"),
                "French comes first");
        says(both, "Formule Confort", "Plan Comfort", "À payer", "To pay");
        assertFalse(paper(tenant, "paper-quebec-french-alone", "fr", "CA", "QC", "249.00")
                .contains("Invoice"));
        says(paper(tenant, "paper-quebec-small-sum", "fr", "CA", "QC", "49.00"), "Lampe du Nord", "56,34");
    }

    @Test
    void ontario_says_the_harmonized_tax() {
        UUID tenant = business.open("CA-ON", "en", "123456789 RT0001", null, false);
        business.in(tenant, business::confirmsOntario);
        says(paper(tenant, "paper-ontario", "en", "CA", "ON", "249.00"), "32.37", "281.37", "123456789 RT0001");
    }

    @Test
    void a_small_supplier_says_why_there_is_no_tax() {
        UUID tenant = business.open("CA-QC", "fr", null, null, true);
        String paper = paper(tenant, "paper-small-supplier", "fr", "CA", "QC", "249.00");
        says(paper, "Petit fournisseur, non inscrit aux taxes", "249,00");
        assertFalse(paper.contains("TPS") || paper.contains("TVQ"), paper);
    }

    /** British Columbia's own tax has no number in the profile; 249.00 bears 12.45 and 17.43. */
    @Test
    void british_columbia_says_both_taxes_and_the_one_number() {
        UUID tenant = business.open("CA-BC", "en", "123456789 RT0001", null, false);
        business.in(tenant, () -> {
            business.confirms("CA-BC gst 2008-01-01 any any any");
            business.confirms("CA-BC pst 2013-04-01 any any any");
        });
        says(paper(tenant, "paper-british-columbia", "en", "CA", "BC", "249.00"), "12.45", "17.43", "123456789 RT0001");
    }

    /** 20 NYCRR 527.7, example 8: the whole price of a yearly contract is taxable; 249.00 at 8.875 % is 22.10. */
    @Test
    void new_york_taxes_the_plan_and_asks_for_no_number() {
        UUID tenant = business.open("US-NY", "en", null, null, false);
        business.in(tenant, () -> business.confirms("US-NY ny_sales 2011-03-01 any any any"));
        says(paper(tenant, "paper-new-york", "en", "US", "NY", "249.00"), "NY sales tax 8.875%", "22.10", "271.10");
    }

    private String paper(UUID tenant, String name, String language, String country, String region, String amount) {
        UUID invoice = business.in(tenant, () -> {
            UUID customer = business.customer("Ida Roe", language, "each");
            business.execute("update customer set buyer_reference = 'Dept. 12' where id = '" + customer + "'");
            UUID home = business.home(customer, country, region);
            UUID draft = drafts.write(List.of(SomeDrafts.plan(customer, home, amount)))
                    .getFirst();
            business.execute("update invoice set language = '" + language + "' where id = '" + draft + "'");
            invoices.issue(draft, SomeDrafts.DAY);
            return draft;
        });
        assertEquals(1, toMake.makePending(tenant, 10), name);
        return Judged.archived(
                name,
                toMake.newest(tenant, PaperKind.INVOICE, invoice).orElseThrow().bytes());
    }

    private static void says(String paper, String... words) {
        for (String word : words) {
            assertTrue(paper.contains(word), word + " in\n" + paper);
        }
    }
}
