package changeover.billing.tax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.InvoiceView;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Constraints;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A place that the shipped table does not know is refused until the owner adds its tax with its source. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class OwnTaxesTest {

    @Inject
    ABusiness business;

    @Inject
    OwnTaxes taxes;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    private static OwnTax.Facts facts(String region, String code, String percent, String source) {
        return new OwnTax.Facts(
                region,
                null,
                null,
                null,
                1,
                code,
                new Wording("GST 5%", "TPS 5 %"),
                "S",
                new BigDecimal(percent),
                "123456789 RT0001",
                LocalDate.of(2020, 1, 1),
                null,
                source);
    }

    @Test
    void the_owners_row_issues_what_was_refused() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID id = drafts.write(List.of(SomeDrafts.plan(customer, business.home(customer, "AB"), "249.00")))
                    .getFirst();
            assertEquals(
                    "tax.place-unknown",
                    assertThrows(Refused.class, () -> invoices.issue(id, SomeDrafts.DAY))
                            .first()
                            .code());
            OwnTax added = taxes.add(facts("ca-ab", "gst", "5", "Excise Tax Act, s. 165"));
            invoices.issue(id, SomeDrafts.DAY);
            InvoiceView view = invoices.view(id).orElseThrow();
            assertEquals("261.45", view.total().decimal());
            assertEquals("Excise Tax Act, s. 165", view.taxes().getFirst().source());
            taxes.end(added.id(), LocalDate.of(2026, 3, 31));
            UUID later = drafts.write(List.of(SomeDrafts.plan(customer, business.home(customer, "AB"), "1.00")))
                    .getFirst();
            assertThrows(Refused.class, () -> invoices.issue(later, SomeDrafts.DAY));
        });
    }

    @Test
    void a_row_without_its_source_or_shape_is_refused() {
        business.in(business.quebec(), () -> {
            check(facts("CA-AB", "gst", "5", " "), "tax.source-missing");
            check(facts("Alberta", "gst", "5", "x"), "tax.region-shape");
            check(facts("CA-AB", "G S T", "5", "x"), "tax.code-shape");
            check(facts("CA-AB", "gst", "101", "x"), "tax.percent");
            check(facts("CA-AB", "gst", "-1", "x"), "tax.percent");
            check(facts("CA-AB", "gst", "5.00001", "x"), "tax.percent");
        });
    }

    @Test
    void the_same_tax_twice_is_said_in_a_sentence() {
        UUID tenant = business.quebec();
        var failure = assertThrows(
                Exception.class,
                () -> business.in(tenant, () -> {
                    taxes.add(facts("CA-AB", "gst", "5", "x"));
                    taxes.add(facts("CA-AB", "gst", "6", "x"));
                }));
        assertEquals(
                "constraint.one_own_tax_a_day",
                Constraints.refusal(failure).orElseThrow().code());
    }

    private void check(OwnTax.Facts facts, String expected) {
        assertEquals(
                expected,
                assertThrows(Refused.class, () -> taxes.add(facts)).first().code());
    }
}
