package changeover.billing.statements;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.documents.Documents;
import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.notices.Outbox;
import changeover.billing.payments.Deposits;
import changeover.billing.payments.NewDeposit;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Way;
import changeover.billing.writeoffs.WriteOffs;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** A month's statements in one go: opening, documents, payments, closing, tied to what is owed. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class AccountStatementsTest {

    static final LocalDate FIRST = LocalDate.of(2026, 5, 1);
    static final LocalDate LAST = LocalDate.of(2026, 5, 31);

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Payments payments;

    @Inject
    AccountStatements statements;

    @Inject
    Deposits deposits;

    @Inject
    WriteOffs writeOffs;

    @Inject
    DocumentsToMake papers;

    @Inject
    Documents documents;

    @Inject
    Outbox outbox;

    private String invoice(UUID customer, LocalDate day, String net) {
        UUID draft = drafts.write(List.of(SomeDrafts.on(day, customer, business.home(customer, "QC"), net)))
                .getFirst();
        return invoices.issue(draft, day).label();
    }

    @Test
    void everybody_who_moved_or_owes_gets_one_that_ties_to_the_documents() {
        UUID tenant = business.quebec();
        UUID ida = business.in(tenant, () -> business.customer("Ida Roe", "en", "each"));
        String label = business.in(tenant, () -> {
            UUID jo = business.customer("Jo Poe");
            UUID mara = business.customer("Mara Quill");
            invoice(mara, FIRST.minusDays(20), "10.00");
            payments.take(new NewPayment(
                    mara, FIRST.minusDays(10), Way.CARD, Money.of("11.50", "CAD"), null, null, List.of()));
            invoice(jo, FIRST.minusDays(20), "20.00");
            invoice(ida, FIRST.minusDays(20), "100.00");
            String number = invoice(ida, FIRST.plusDays(3), "200.00");
            payments.take(new NewPayment(
                    ida, FIRST.plusDays(9), Way.CHEQUE, Money.of("114.98", "CAD"), "114", null, List.of()));
            assertEquals(Set.of(ida, jo), statements.whom(FIRST, LAST).keySet());
            assertEquals(2, statements.send(FIRST, LAST, Set.of()));
            assertEquals(0, statements.send(FIRST, LAST, Set.of()), "once a day");
            assertThrows(Refused.class, () -> statements.send(LAST, FIRST, Set.of()));
            return number;
        });
        papers.makePending(tenant, 20);
        business.in(tenant, () -> {
            AccountStatements.Made made = statements.of(ida).getFirst();
            assertEquals("229.95", made.closing().decimal());
            byte[] pdf = documents
                    .newest(PaperKind.STATEMENT, made.id())
                    .orElseThrow()
                    .bytes();
            String text = text(pdf);
            assertTrue(text.contains("229,95") && text.contains("$229.95"), text);
            assertTrue(text.indexOf("229,95") < text.indexOf("$229.95"), "in Quebec in French first");
            assertEquals(
                    "11498 34493 -11498 22995 " + label,
                    business.one(
                            "select concat_ws(' ', opening_minor, opening_minor + (lines -> 0 ->> 'amount')::bigint,"
                                    + " lines -> 1 ->> 'amount', closing_minor, lines -> 0 ->> 'said') from account_statement"
                                    + " where customer_id = '" + ida + "'"));
            assertEquals(
                    1,
                    outbox.to(ida).stream()
                            .filter(one -> one.kind().equals("statement"))
                            .count());
        });
    }

    /** 100.00 in Quebec is 114.98: given up by us it is still owed, and a deposit lessens it only when it is applied. */
    @Test
    void a_customer_sees_what_they_owe_and_what_is_kept_for_work_to_come() {
        UUID tenant = business.quebec();
        business.in(tenant, () -> {
            UUID ida = business.customer("Ida Roe");
            UUID home = business.home(ida, "QC");
            UUID draft = drafts.write(List.of(SomeDrafts.on(FIRST.minusDays(20), ida, home, "100.00")))
                    .getFirst();
            UUID invoice = invoices.issue(draft, FIRST.minusDays(20)).invoiceId();
            writeOffs.giveUp(invoice, FIRST.plusDays(1), Money.of("64.98", "CAD"), "Nobody answers");
            UUID deposit = deposits.take(new NewDeposit(
                    ida, home, null, null, FIRST.plusDays(2), Way.CARD, Money.of("80.00", "CAD"), null, "Boiler"));
            deposits.apply(deposit, invoice, FIRST.plusDays(3), Money.of("30.00", "CAD"));
            UUID jo = business.customer("Jo Poe");
            UUID gone = drafts.write(List.of(SomeDrafts.on(FIRST.minusDays(20), jo, business.home(jo, "QC"), "100.00")))
                    .getFirst();
            invoices.issue(gone, FIRST.minusDays(20));
            writeOffs.giveUp(gone, FIRST.plusDays(1), null, "Bankrupt");
            assertEquals(
                    Map.of(ida, Money.of("84.98", "CAD")),
                    statements.whom(FIRST, LAST),
                    "who is given up is left alone");
            statements.send(FIRST, LAST, Set.of());
            assertEquals(
                    "11498 8498 5000 1 deposit-applied -3000",
                    business.one(
                            "select concat_ws(' ', opening_minor, closing_minor, deposits_minor, json_array_length(lines),"
                                    + " lines -> 0 ->> 'what', lines -> 0 ->> 'amount') from account_statement"
                                    + " where customer_id = '" + ida + "'"));
            String said = outbox.to(ida).getFirst().body();
            assertTrue(said.contains("Il reste à payer 84,98\u00a0$."), said);
            assertTrue(said.contains("Un acompte de 50,00\u00a0$ est gardé"), said);
            assertTrue(!said.contains("ce message") && !said.contains("{answer}"), said);
            assertEquals(1, statements.send(FIRST, LAST, Set.of(jo)), "asked for by name it says what is owed");
            assertEquals("114.98", statements.of(jo).getFirst().closing().decimal());
        });
    }

    private static String text(byte[] pdf) {
        try (var document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }
}
