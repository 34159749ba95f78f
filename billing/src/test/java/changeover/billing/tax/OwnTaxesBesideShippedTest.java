package changeover.billing.tax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.InvoiceView;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.contracts.PostgresForTests;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A business's own rows beside the shipped ones: each takes the place of those of its tax, and of no other. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class OwnTaxesBesideShippedTest {

    @Inject
    ABusiness business;

    @Inject
    OwnTaxes taxes;

    @Inject
    TaxTables tables;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    /** The owner's row for one case outranks ours of that tax; the place's other tax and the other cases stay. */
    @Test
    void a_row_may_hold_for_one_use_work_and_contract_alone() {
        business.in(business.quebec(), () -> {
            OwnTax.Facts all = OwnTaxesTest.facts("CA-QC", "gst", "0", "as the owner read it");
            taxes.add(new OwnTax.Facts(
                    all.region(),
                    PropertyUse.COMMERCIAL,
                    Work.REPAIR,
                    ContractForm.SEPARATE,
                    1,
                    "gst",
                    all.label(),
                    "E",
                    BigDecimal.ZERO,
                    null,
                    all.from(),
                    null,
                    all.source()));
            holds(PropertyUse.COMMERCIAL, Work.REPAIR, ContractForm.SEPARATE, "gst E 0, qst S 9.975");
            holds(PropertyUse.COMMERCIAL, Work.REPAIR, ContractForm.LUMP_SUM, "gst S 5, qst S 9.975");
            holds(PropertyUse.RESIDENTIAL, Work.REPAIR, ContractForm.SEPARATE, "gst S 5, qst S 9.975");
            holds(PropertyUse.COMMERCIAL, Work.MAINTENANCE, ContractForm.SEPARATE, "gst S 5, qst S 9.975");
        });
    }

    /** By hand: 249.00 × 5 % = 12.45, 249.00 × 10 % = 24.90, 286.35 in all; the GST stays though only a QST was written. */
    @Test
    void an_own_row_of_one_tax_leaves_the_places_other_tax() {
        business.in(business.quebec(), () -> {
            taxes.add(OwnTaxesTest.facts("CA-QC", "qst", "10", "as if the rate had changed"));
            UUID customer = business.customer("Ida Roe");
            UUID id = drafts.write(List.of(SomeDrafts.plan(customer, business.home(customer, "QC"), "249.00")))
                    .getFirst();
            InvoiceView.Tax[] charged =
                    invoices.preview(id, SomeDrafts.DAY).taxes().toArray(InvoiceView.Tax[]::new);
            assertEquals("12.45", charged[0].amount().decimal());
            assertEquals("24.90", charged[1].amount().decimal());
            assertEquals("286.35", invoices.preview(id, SomeDrafts.DAY).total().decimal());
        });
    }

    /** By hand: 100.00 × 6 % = 6.00 from its first day on, and not 5 and 6 together. */
    @Test
    void a_later_row_of_the_same_tax_takes_over_on_its_first_day() {
        business.in(business.quebec(), () -> {
            OwnTax.Facts first = OwnTaxesTest.facts("CA-AB", "gst", "5", "as the owner read it");
            taxes.add(first);
            taxes.add(from(first, "6", LocalDate.of(2027, 1, 1)));
            assertEquals("gst S 5", said("CA-AB", LocalDate.of(2026, 12, 31)));
            assertEquals("gst S 6", said("CA-AB", LocalDate.of(2027, 1, 1)));
        });
    }

    @Test
    void what_a_place_will_charge_is_said_before_a_row_is_added() {
        business.in(business.quebec(), () -> {
            OwnTax.Facts qst = from(OwnTaxesTest.facts("CA-QC", "qst", "10", "x"), "10", LocalDate.of(2027, 1, 1));
            assertEquals("gst 5, qst 10", charged(qst));
            assertEquals("gst S 5, qst S 9.975", said("CA-QC", LocalDate.of(2027, 1, 1)));
            assertEquals(
                    "ny_sales 8.875, erie 4.75, ny_sales 0", charged(OwnTaxesTest.facts("US-NY", "erie", "4.75", "x")));
        });
    }

    /** What is harmonized has no second tax beside it; where the owner writes a harmonized one, the place's two fall away. */
    @Test
    void a_harmonized_tax_stands_alone() {
        business.in(business.quebec(), () -> {
            check(OwnTaxesTest.facts("CA-ON", "gst", "5", "x"), "tax.harmonized-there");
            check(OwnTaxesTest.facts("CA-ON", "pst", "8", "x"), "tax.harmonized-there");
            taxes.add(OwnTaxesTest.facts("CA-BC", "hst", "12", "as if it had come again"));
            assertEquals("hst S 12", said("CA-BC", SomeDrafts.DAY));
            check(OwnTaxesTest.facts("CA-BC", "gst", "5", "x"), "tax.harmonized-there");
            taxes.add(OwnTaxesTest.facts("CA-MB", "gst", "5", "x"));
            check(OwnTaxesTest.facts("CA-MB", "hst", "12", "x"), "tax.parts-there");
            taxes.end("CA-MB gst 2020-01-01 any any any", LocalDate.of(2027, 6, 30));
            check(OwnTaxesTest.facts("CA-MB", "hst", "12", "x"), "tax.parts-there");
            taxes.add(from(OwnTaxesTest.facts("CA-MB", "hst", "12", "x"), "12", LocalDate.of(2027, 7, 1)));
        });
    }

    @Test
    void a_row_is_ended_once() {
        business.in(business.quebec(), () -> {
            taxes.add(OwnTaxesTest.facts("CA-AB", "gst", "6", "x"));
            String row = "CA-AB gst 2020-01-01 any any any";
            assertEquals("tax.not-found", ended("CA-AB gst 2020-01-02 any any any", LocalDate.of(2026, 1, 1)));
            assertEquals("tax.until-before-from", ended(row, LocalDate.of(2019, 12, 31)));
            taxes.end(row, LocalDate.of(2326, 1, 1));
            taxes.end(row, LocalDate.of(2020, 12, 31));
            assertEquals("gst S 5", said("CA-AB", SomeDrafts.DAY));
            assertEquals("tax.ended", ended(row, LocalDate.of(2026, 1, 1)));
        });
    }

    private String ended(String row, LocalDate lastDay) {
        return assertThrows(Refused.class, () -> taxes.end(row, lastDay))
                .first()
                .code();
    }

    private static OwnTax.Facts from(OwnTax.Facts facts, String percent, LocalDate day) {
        return new OwnTax.Facts(
                facts.region(),
                null,
                null,
                null,
                2,
                facts.code(),
                facts.label(),
                "S",
                new BigDecimal(percent),
                null,
                day,
                null,
                facts.source());
    }

    private String charged(OwnTax.Facts facts) {
        return tables.tried(facts).stream()
                .map(row -> row.tax().code() + " " + row.tax().percent().toPlainString())
                .collect(Collectors.joining(", "));
    }

    private String said(String region, LocalDate day) {
        return said(new TaxQuestion(region, PropertyUse.RESIDENTIAL, Work.MAINTENANCE, ContractForm.PLAN, day));
    }

    private void holds(PropertyUse use, Work work, ContractForm form, String expected) {
        assertEquals(expected, said(new TaxQuestion("CA-QC", use, work, form, SomeDrafts.DAY)));
    }

    private String said(TaxQuestion question) {
        return ((TaxAnswer.Known) tables.current().taxesFor(question))
                .taxes().stream()
                        .map(tax -> tax.code() + " " + tax.category() + " "
                                + tax.percent().toPlainString())
                        .collect(Collectors.joining(", "));
    }

    private void check(OwnTax.Facts facts, String expected) {
        assertEquals(
                expected,
                assertThrows(Refused.class, () -> taxes.add(facts)).first().code());
    }
}
