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
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
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
    TaxTables tables;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    static OwnTax.Facts facts(String region, String code, String percent, String source) {
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

    /** Quebec has two taxes, never one of 14.975; other places may have such a rate, and 9.975 is Quebec's own. */
    @Test
    void the_two_taxes_of_quebec_are_never_one() {
        business.in(business.quebec(), () -> {
            refusedFor("CA-QC", "hst", "14.975", "Taxes", "Taxes 14,975 %", "label percent");
            refusedFor("ca-qc ", "hst", "14.9750", "Taxes", "Taxes", "percent");
            refusedFor("CA-QC", "qst", "9.97", "QST 9.97%", "TVQ", "label percent");
            refusedFor("CA-QC", "qst", "14.97", "QST", "TVQ", "percent");
            refusedFor("CA-QC", "qst", "9.975", "GST and QST 14.97%", "TVQ 9,975 %", "label");
            refusedFor("CA-QC", "qst", "9.975", "QST 9.975%", "TVQ 9,975 %", "");
            refusedFor("US-OH", "oh_sales", "9.97", "Sales tax 9.97%", "Taxe 9,97 %", "");
        });
    }

    private void refusedFor(
            String region, String code, String percent, String english, String french, String expected) {
        OwnTax.Facts some = facts(region, code, percent, "as the owner read it");
        OwnTax.Facts typed = new OwnTax.Facts(
                region,
                null,
                null,
                null,
                1,
                code,
                new Wording(english, french),
                "S",
                some.percent(),
                null,
                some.from(),
                null,
                some.source());
        String fields = "";
        try {
            taxes.add(typed);
        } catch (Refused refused) {
            fields = refused.refusals().stream()
                    .filter(one -> one.code().equals("tax.quebec-two"))
                    .map(Refusal::field)
                    .collect(Collectors.joining(" "));
        }
        assertEquals(expected, fields, english + " " + percent);
    }

    @Test
    void the_owners_row_issues_what_was_refused() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID id = drafts.write(List.of(SomeDrafts.plan(customer, business.home(customer, "US", "OH"), "249.00")))
                    .getFirst();
            assertEquals(
                    "tax.place-unknown",
                    assertThrows(Refused.class, () -> invoices.issue(id, SomeDrafts.DAY))
                            .first()
                            .code());
            OwnTax added = taxes.add(facts("us-oh", "oh_sales", "5", "Ohio Revised Code, as its owner read it"));
            invoices.issue(id, SomeDrafts.DAY);
            InvoiceView view = invoices.view(id).orElseThrow();
            assertEquals("261.45", view.total().decimal());
            assertEquals(
                    "Ohio Revised Code, as its owner read it",
                    view.taxes().getFirst().source());
            taxes.end(added.row().key(), LocalDate.of(2026, 3, 31));
            UUID later = drafts.write(List.of(SomeDrafts.plan(customer, business.home(customer, "US", "OH"), "1.00")))
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

    /** A rate from memory is shown on a draft; it is issued once the owner has read it, and the document says where. */
    @Test
    void a_rate_from_memory_issues_nothing_until_the_owner_has_read_it() {
        business.in(business.quebec(), () -> {
            UUID customer = business.customer("Ida Roe");
            UUID id = drafts.write(List.of(SomeDrafts.plan(customer, business.home(customer, "BC"), "249.00")))
                    .getFirst();
            assertEquals("278.88", invoices.preview(id, SomeDrafts.DAY).total().decimal());
            assertEquals("tax.from-memory", refused(id));
            confirm("CA-BC gst 2008-01-01 any any any", null);
            assertEquals("tax.from-memory", refused(id));
            confirm("CA-BC pst 2013-04-01 any any any", "PST-1234-5678");
            invoices.issue(id, SomeDrafts.DAY);
            InvoiceView.Tax pst = invoices.view(id).orElseThrow().taxes().get(1);
            assertEquals("17.43", pst.amount().decimal());
            assertEquals("PST-1234-5678", pst.registration());
            assertEquals("The province's own page (2026-01-05)", pst.source());
        });
    }

    @Test
    void a_confirmation_says_what_was_read_and_when_once() {
        business.in(business.quebec(), () -> {
            var unsaid = new TaxConfirmation.Facts(" ", LocalDate.of(2026, 1, 5), null);
            var toCome = new TaxConfirmation.Facts("The agency's page", LocalDate.of(2226, 1, 5), null);
            String ontario = "CA-ON hst 2010-07-01 any any any";
            assertEquals("tax.source-missing", refused(ontario, unsaid));
            assertEquals("tax.read-to-come", refused(ontario, toCome));
            assertEquals("tax.nothing-to-confirm", refused("CA-QC gst 2013-01-01 any any any", unsaid));
            confirm(ontario, null);
            assertEquals("tax.nothing-to-confirm", refused(ontario, unsaid));
        });
    }

    private void confirm(String row, @Nullable String number) {
        tables.confirm(row, new TaxConfirmation.Facts("The province's own page", LocalDate.of(2026, 1, 5), number));
    }

    private String refused(String row, TaxConfirmation.Facts facts) {
        return assertThrows(Refused.class, () -> tables.confirm(row, facts))
                .first()
                .code();
    }

    private String refused(UUID draft) {
        return assertThrows(Refused.class, () -> invoices.issue(draft, SomeDrafts.DAY))
                .first()
                .code();
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

    /** Whatever a row of the table may be about, its confirmation can be kept: a fee's too. */
    @Test
    void every_kind_of_work_can_be_confirmed() {
        business.in(business.quebec(), () -> {
            for (Work work : Work.values()) {
                business.execute(
                        "insert into tax_confirmation (region, property_use, work, contract_form, code, percent,"
                                + " valid_from, source, read_on) values ('CA-BC', 'any', '" + work.code()
                                + "', 'any', 'gst', 5, '2008-01-01', 'The agency''s page', '2026-01-05')");
            }
        });
    }
}
