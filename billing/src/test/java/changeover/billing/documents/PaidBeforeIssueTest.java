package changeover.billing.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.BooksHold;
import changeover.billing.invoices.Draft;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.notices.Outbox;
import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Undoing;
import changeover.billing.payments.Way;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Money that came for a draft stands on its invoice and in the message: what was paid, and what is left. 249.00 with its taxes is 286.29. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PaidBeforeIssueTest {

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Payments payments;

    @Inject
    InvoiceSheets sheets;

    @Inject
    DocumentsToMake toMake;

    @Inject
    Outbox outbox;

    @Inject
    BooksHold books;

    @Inject
    Today today;

    private UUID draft(UUID customer, String language) {
        LocalDate day = today.day();
        Draft one = SomeDrafts.on(day, customer, business.home(customer, "QC"), "249.00");
        return drafts.write(List.of(new Draft(
                        one.kind(),
                        null,
                        customer,
                        one.homeId(),
                        null,
                        null,
                        null,
                        null,
                        null,
                        language,
                        one.currency(),
                        day,
                        false,
                        null,
                        30,
                        null,
                        one.lines())))
                .getFirst();
    }

    private UUID pay(UUID customer, UUID document, String amount) {
        Money money = Money.of(amount, "CAD");
        return payments.take(new NewPayment(
                customer, today.day(), Way.CARD, money, null, null, List.of(new NewPayment.Part(document, money))));
    }

    private String paper(UUID tenant, UUID invoice) {
        return Judged.text(
                toMake.newest(tenant, PaperKind.INVOICE, invoice).orElseThrow().bytes());
    }

    private String letter(UUID tenant, UUID invoice) {
        return business.in(tenant, () -> outbox.about(invoice).getFirst().body());
    }

    private static void check(String text, List<String> says, List<String> saysNot) {
        says.forEach(said -> assertTrue(text.contains(said), said + " in\n" + text));
        saysNot.forEach(said -> assertFalse(text.contains(said), said + " in\n" + text));
    }

    @Test
    void a_draft_paid_whole_asks_for_nothing() {
        UUID tenant = business.quebec();
        UUID invoice = business.in(tenant, () -> {
            UUID customer = business.customer("Ida Roe");
            UUID id = draft(customer, "fr");
            pay(customer, id, "286.29");
            check(
                    Judged.text(InvoicePdf.bytes(sheets.of(invoices.preview(id, today.day())))),
                    List.of("Payé", "–286,29", "Rien à payer"),
                    List.of("Chèque à l’ordre"));
            invoices.issue(id, today.day());
            books.check();
            return id;
        });
        check(
                paper(tenant, invoice),
                List.of("–286,29", "Rien à payer", "Payée avant son émission : merci."),
                List.of("Chèque à l’ordre", "À payer"));
        check(letter(tenant, invoice), List.of("Vous l’avez déjà payée, merci"), List.of("au plus tard", "Écrivez F-"));
    }

    @Test
    void of_a_draft_paid_in_part_the_rest_is_asked_for() {
        UUID tenant = business.quebec();
        UUID invoice = business.in(tenant, () -> {
            UUID customer = business.customer("Ida Roe");
            UUID id = draft(customer, "en");
            pay(customer, id, "179.62");
            invoices.issue(id, today.day());
            return id;
        });
        business.in(tenant, () -> {
            UUID customer =
                    UUID.fromString(business.one("select customer_id from invoice where id = '" + invoice + "'"));
            pay(customer, invoice, "6.67");
        });
        check(
                paper(tenant, invoice),
                List.of("286.29", "–179.62", "$106.67", "To pay", "Cheques to"),
                List.of("100.00", "Nothing to pay"));
        check(
                letter(tenant, invoice),
                List.of("$286.29. You have already paid $179.62 of it, thank you; $106.67 is to be paid by"),
                List.of());
        assertEquals(
                "106.67",
                business.in(
                        tenant,
                        () -> invoices.view(invoice).orElseThrow().leftToPay().decimal()));
    }

    /** What came back before the day of issuing is not paid; what comes after it is no part of the paper. */
    @Test
    void only_what_was_paid_when_it_was_issued_counts() {
        UUID tenant = business.quebec();
        UUID invoice = business.in(tenant, () -> {
            UUID customer = business.customer("Ida Roe");
            UUID id = draft(customer, "en");
            UUID cheque = pay(customer, id, "286.29");
            payments.undo(cheque, Undoing.How.BOUNCED, today.day(), "No funds");
            invoices.issue(id, today.day());
            pay(customer, id, "286.29");
            return id;
        });
        check(paper(tenant, invoice), List.of("To pay", "$286.29", "Cheques to"), List.of("–286.29", "Nothing to pay"));
        check(letter(tenant, invoice), List.of("$286.29, to be paid by"), List.of("already paid"));
    }
}
