package changeover.billing.estimates;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.billing.documents.Document;
import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.billing.notices.Outbox;
import changeover.billing.notices.OutboxMessage;
import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.util.List;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The paper of an estimate is drawn from what was offered. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class EstimatePaperTest {

    @Inject
    ABusiness business;

    @Inject
    AnEstimate some;

    @Inject
    Offering offering;

    @Inject
    DocumentsToMake papers;

    @Inject
    Outbox outbox;

    private UUID home() {
        some.prices();
        return business.home(business.customer("Ida Roe", "en", "each"), "QC");
    }

    /** In Quebec its paper is in French, with the customer's own language after it. */
    @Test
    void it_has_its_paper() throws IOException {
        UUID tenant = business.quebec();
        UUID id = business.in(tenant, () -> {
            UUID made = some.written(home(), null);
            offering.offer(made);
            return made;
        });
        Document paper = papers.newest(tenant, PaperKind.ESTIMATE, id).orElseThrow();
        try (var document = Loader.loadPDF(paper.bytes())) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("Estimation") && text.contains("Estimate"), text);
            assertTrue(text.contains("Capteur de flamme") && text.contains("Flame sensor"), text);
            assertTrue(text.contains("236,74") && text.contains("236.74"), text);
            assertTrue(text.contains("Rien n’est fait au-delà"), text);
            assertTrue(text.indexOf("236,74") < text.indexOf("236.74"), text);
        }
    }

    @Test
    void it_goes_to_whoever_pays_with_its_paper() {
        UUID tenant = business.quebec();
        UUID id = business.in(tenant, () -> {
            UUID made = some.written(home(), null);
            offering.offer(made);
            return made;
        });
        business.in(tenant, () -> {
            List<OutboxMessage> written = outbox.about(id);
            assertEquals(1, written.size());
            OutboxMessage message = written.getFirst();
            assertEquals("estimate", message.kind());
            assertEquals(1, message.attached());
            assertTrue(message.subject().contains("$236.74"), message.subject());
            assertTrue(message.body().contains("Remplacer les deux capteurs de flamme"), message.body());
            assertTrue(message.body().contains("before your yes"), message.body());
        });
    }
}
