package changeover.billing.invoices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Constraints;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class IssuingTest {

    static final LocalDate DAY = SomeDrafts.DAY;
    static final Wording WHY = new Wording("Moved away.", "Déménagement.");

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Credits credits;

    @Inject
    NumberSeries series;

    private UUID draft(String region, String... amounts) {
        UUID customer = business.customer("Ida Roe");
        return drafts.write(List.of(SomeDrafts.plan(customer, business.home(customer, region), amounts)))
                .getFirst();
    }

    @Test
    void a_plan_of_249_in_quebec_is_286_29() {
        business.in(business.quebec(), () -> {
            UUID id = draft("QC", "249.00");
            InvoiceIssued.Issued issued = invoices.issue(id, DAY);
            assertEquals("F-2026-0001", issued.label());
            InvoiceView view = invoices.view(id).orElseThrow();
            assertEquals("286.29", view.total().decimal());
            assertEquals(
                    "[TPS/GST 5 % 12.45, TVQ/QST 9,975 % 24.84]",
                    view.taxes().stream()
                            .map(tax -> tax.label().fr() + " " + tax.amount().decimal())
                            .toList()
                            .toString());
            assertEquals("123456789 RT0001", view.taxes().getFirst().registration());
            assertEquals("Ida Roe", view.buyer().name());
            assertEquals(LocalDate.of(2026, 5, 1), view.dueDay());
        });
    }

    @Test
    void a_preview_says_what_issuing_gives() {
        business.in(business.quebec(), () -> {
            UUID id = draft("QC", "249.00");
            InvoiceView preview = invoices.preview(id, DAY);
            invoices.issue(id, DAY);
            InvoiceView issued = invoices.view(id).orElseThrow();
            assertEquals(issued.taxes(), preview.taxes());
            assertEquals(issued.lines(), preview.lines());
            assertEquals(issued.seller(), preview.seller());
            assertEquals(issued.works(), preview.works());
        });
    }

    @Test
    void one_that_is_refused_keeps_no_other_from_being_issued() {
        business.in(business.quebec(), () -> {
            UUID good = draft("QC", "100.00");
            UUID unknownPlace = draft("XX", "100.00");
            UUID nobodys = UUID.randomUUID();
            Issuing.Outcome outcome = invoices.issue(List.of(unknownPlace, good, nobodys), DAY);
            assertEquals(1, outcome.issued().size());
            assertEquals("tax.place-unknown", code(outcome, unknownPlace));
            assertEquals("invoice.not-found", code(outcome, nobodys));
            assertEquals(
                    "invoice.already-issued",
                    refused(() -> invoices.issue(good, DAY)).code());
            assertEquals(
                    "invoice.too-early",
                    refused(() -> invoices.issue(draft("QC", "1.00"), DAY.minusDays(1)))
                            .code());
        });
    }

    @Test
    void without_numbers_nothing_is_issued_and_a_small_supplier_charges_no_tax() {
        business.in(business.open("CA-QC", "fr", null, null, false), () -> {
            UUID id = draft("QC", "100.00");
            assertEquals(
                    "invoice.registration-missing",
                    refused(() -> invoices.issue(id, DAY)).code());
        });
        business.in(business.open("CA-QC", "en", null, null, true), () -> {
            UUID id = draft("QC", "100.00");
            assertEquals("INV-2026-0001", invoices.issue(id, DAY).label());
            assertEquals(List.of(), invoices.view(id).orElseThrow().taxes());
        });
    }

    @Test
    void a_part_of_a_plan_is_credited_by_the_cumulative_method_and_never_more_than_was_charged() {
        business.in(business.quebec(), () -> {
            UUID id = draft("QC", "249.00");
            invoices.issue(id, DAY);
            UUID credit = credits.inPart(id, DAY, Map.of(1, Money.of("156.22", "CAD")), WHY);
            assertEquals("NC-2026-0001", invoices.issue(credit, DAY).label());
            InvoiceView view = invoices.view(credit).orElseThrow();
            assertEquals("179.62", view.total().decimal());
            assertEquals("F-2026-0001", view.creditsLabel());
            assertEquals(
                    "credit.more-than-charged",
                    refused(() -> credits.inPart(id, DAY, Map.of(1, Money.of("92.79", "CAD")), WHY))
                            .code());
            UUID rest = credits.inFull(id, DAY, WHY);
            UUID twice = credits.inFull(id, DAY, WHY);
            invoices.issue(rest, DAY);
            assertEquals("106.67", invoices.view(rest).orElseThrow().total().decimal());
            assertEquals(
                    "credit.more-than-charged",
                    refused(() -> invoices.issue(twice, DAY)).code());
            assertEquals(
                    "credit.nothing",
                    refused(() -> credits.inFull(id, DAY, WHY)).code());
            assertEquals(
                    "credit.not-issued",
                    refused(() -> credits.inFull(draft("QC", "1.00"), DAY, WHY)).code());
        });
    }

    @Test
    void an_issued_document_never_changes() {
        UUID tenant = business.quebec();
        UUID id = business.in(tenant, () -> {
            UUID made = draft("QC", "249.00");
            invoices.issue(made, DAY);
            return made;
        });
        for (String change : List.of(
                "update invoice set due_days = 1 where id = '%s'",
                "delete from invoice where id = '%s'",
                "update invoice_line set net_minor = 1 where invoice_id = '%s'",
                "delete from invoice_line where invoice_id = '%s'",
                "insert into invoice_line (invoice_id, position, day, kind, coverage, work, contract_form, words_en,"
                        + " words_fr, why_en, why_fr, quantity, unit, net_minor) values ('%s', 9, '2026-04-01', 'other',"
                        + " 'billable', 'repair', 'separate', '', '', '', '', 1, 'C62', 0)",
                "insert into invoice_tax (invoice_id, position, code, label_en, label_fr, category, percent, base_minor,"
                        + " amount_minor, region, source, lines) values ('%s', 9, 'x', '', '', 'S', 1, 1, 1, '', '',"
                        + " '{}')")) {
            var failure = assertThrows(
                    Exception.class,
                    () -> business.in(tenant, () -> {
                        business.execute(change.formatted(id));
                    }),
                    change);
            assertEquals("issued_never_changes", Constraints.name(failure).orElseThrow(), change);
            assertTrue(Constraints.refusal(failure).isPresent());
        }
        for (String table : List.of("invoice_issue", "invoice_tax")) {
            assertThrows(
                    Exception.class,
                    () -> business.in(tenant, () -> {
                        business.execute("update " + table + " set made_at = now()");
                    }));
        }
    }

    @Test
    void a_business_that_has_numbered_before_says_its_first_number() {
        business.in(business.quebec(), () -> {
            series.choose(NumberedKind.INVOICE, "FAC{yy}-{number}");
            series.first(NumberedKind.INVOICE, DAY, 391);
            assertEquals("FAC26-391", invoices.issue(draft("QC", "1.00"), DAY).label());
            assertEquals("FAC26-392", invoices.issue(draft("QC", "1.00"), DAY).label());
            assertEquals(
                    "numbering.begun",
                    refused(() -> series.first(NumberedKind.INVOICE, DAY, 1)).code());
        });
    }

    @Test
    void a_payer_of_three_homes_who_wants_one_invoice_gets_one() {
        business.in(business.quebec(), () -> {
            business.confirmsOntario();
            UUID payer = business.customer("Gestion Roe", "fr", "one");
            List<UUID> ids = drafts.write(List.of(
                    SomeDrafts.plan(payer, business.home(payer, "QC"), "100.00"),
                    SomeDrafts.plan(payer, business.home(payer, "ON"), "50.00"),
                    SomeDrafts.plan(payer, business.home(payer, "QC"), "40.00")));
            Issuing.Outcome outcome = invoices.issue(ids, DAY);
            assertEquals(1, outcome.issued().size());
            assertEquals(2, outcome.joined().size());
            InvoiceView view = invoices.view(ids.getFirst()).orElseThrow();
            assertEquals(3, view.works().size());
            assertEquals(
                    "[gst 140.00 7.00 [1, 3], qst 140.00 13.97 [1, 3], hst 50.00 6.50 [2]]",
                    view.taxes().stream()
                            .map(tax -> tax.code() + " " + tax.base().decimal() + " "
                                    + tax.amount().decimal() + " " + tax.lines())
                            .toList()
                            .toString());
        });
    }

    private static String code(Issuing.Outcome outcome, UUID draft) {
        Refusal refusal = outcome.refused().get(draft);
        return refusal == null ? "issued" : refusal.code();
    }

    private static Refusal refused(org.junit.jupiter.api.function.Executable verb) {
        return assertThrows(Refused.class, verb).first();
    }
}
