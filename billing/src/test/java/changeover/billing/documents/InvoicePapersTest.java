package changeover.billing.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.invoices.Credits;
import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.Invoices;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.notices.Outbox;
import changeover.billing.notices.OutboxMessage;
import changeover.contracts.PostgresForTests;
import changeover.contracts.digests.Sha256;
import changeover.contracts.words.Wording;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class InvoicePapersTest {

    @Inject
    ABusiness business;

    @Inject
    Drafts drafts;

    @Inject
    Invoices invoices;

    @Inject
    Credits credits;

    @Inject
    InvoiceSheets sheets;

    @Inject
    DocumentsToMake toMake;

    @Inject
    Outbox outbox;

    @Test
    void an_issued_invoice_and_its_credit_note_get_their_papers_after_the_commit() {
        UUID tenant = business.quebec();
        UUID invoice = business.in(tenant, () -> {
            UUID customer = business.customer("Ida Roe");
            UUID id = drafts.write(List.of(SomeDrafts.plan(customer, business.home(customer, "QC"), "249.00")))
                    .getFirst();
            String preview = Judged.text(InvoicePdf.bytes(sheets.of(invoices.preview(id, SomeDrafts.DAY))));
            assertTrue(preview.contains("Brouillon, non émis"), preview);
            invoices.issue(id, SomeDrafts.DAY);
            return id;
        });
        UUID credit = business.in(tenant, () -> {
            UUID id = credits.inFull(invoice, SomeDrafts.DAY, new Wording("Moved away.", "Déménagement."));
            invoices.issue(id, SomeDrafts.DAY);
            return id;
        });
        business.in(tenant, () -> {
            assertEquals(2, outbox.countToPrint());
            OutboxMessage letter = outbox.about(invoice).getFirst();
            assertEquals("Votre facture F-2026-0001\u00a0: 286,29\u00a0$", letter.subject());
            assertTrue(letter.body().startsWith("Bonjour Ida Roe,"), letter.body());
            assertTrue(letter.body().contains("à payer au plus tard le"), letter.body());
            assertEquals(OutboxMessage.Standing.WAITS_FOR_PAPERS, letter.standing());
        });
        assertEquals(2, toMake.makePending(tenant, 100));
        Document made = toMake.newest(tenant, PaperKind.INVOICE, invoice).orElseThrow();
        assertEquals("F-2026-0001.pdf", made.fileName());
        String text = Judged.archived("invoice-made", made.bytes());
        for (String said :
                new String[] {"F-2026-0001", "12,45", "24,84", "286,29 $", "TPS/GST 5 %", "TVQ/QST 9,975 %"}) {
            assertTrue(text.contains(said), said + " in\n" + text);
        }
        assertFalse(text.contains("14,975"));
        String credited = Judged.archived(
                "credit-made",
                toMake.newest(tenant, PaperKind.CREDIT, credit).orElseThrow().bytes());
        for (String said : new String[] {"Note de crédit", "NC-2026-0001", "F-2026-0001", "Déménagement.", "Crédité"}) {
            assertTrue(credited.contains(said), said + " in\n" + credited);
        }
        assertEquals(Sha256.hex(made.bytes()), made.sha256());
        business.in(tenant, () -> {
            assertEquals("2", business.one("select count(*)::text from document where start_sha256 is not null"));
        });
    }
}
