package changeover.billing.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ABusiness;
import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ReportPapersTest {

    @Inject
    ABusiness business;

    @Inject
    DocumentsToMake toMake;

    @Inject
    ReportSheets sheets;

    @Inject
    Documents documents;

    @Inject
    EntityManager rows;

    @Test
    void a_closed_visit_gets_its_report_from_its_rows_in_the_language_of_whoever_gets_it() {
        UUID tenant = business.quebec();
        var rows = new ClosedVisitRows(business);
        business.in(tenant, rows::write);
        business.in(tenant, () -> documents.order(List.of(Wanted.of(PaperKind.REPORT, rows.visit))));
        assertEquals(1, toMake.makePending(tenant, 10));
        Document report = toMake.newest(tenant, PaperKind.REPORT, rows.visit).orElseThrow();
        assertEquals("rapport-de-visite-2026-05-27.pdf", report.fileName());
        String text = Judged.archived("report-made", report.bytes());
        for (String said : new String[] {
            "CLOSE 27 MAI 2026",
            "de 8 h 04 à 10 h 21",
            "Mateo Ruiz, une visite de votre formule",
            "Thermopompe",
            "14,2 A",
            "au-dessus, voir 1",
            "Urgent · 1",
            "Il bruisse.",
            "Nous revenons pour cela.",
            "Photo 1",
            "Le palier",
            "Laver le serpentin",
            "Non fait",
            "Pas aujourd’hui : trop froid",
            "2 × Filtre 16 × 25 × 4",
            "d’ici le 10 juin 2026",
            "puis 10 juil.",
            "Reçu par : Ida Roe, 10 h 21",
            "cartes de compétence : frigorigène",
            "Prochaine visite 15 octobre 2026, 8 h"
        }) {
            assertTrue(text.contains(said), said + " in\n" + text);
        }
        assertFalse(text.contains("Version 2"));
    }

    @Test
    void a_reading_says_what_it_was_taken_with_and_that_its_calibration_was_over() {
        UUID tenant = business.quebec();
        var closed = new ClosedVisitRows(business);
        business.in(tenant, closed::write);
        business.in(
                tenant,
                () -> rows.createNativeQuery(
                                "update reading set instrument = 'Pince, A-9', instrument_until = '2026-05-02'")
                        .executeUpdate());
        business.in(tenant, () -> documents.order(List.of(Wanted.of(PaperKind.REPORT, closed.visit))));
        toMake.makePending(tenant, 10);
        Document report = toMake.newest(tenant, PaperKind.REPORT, closed.visit).orElseThrow();
        String text = Judged.archived("report-instrument", report.bytes()).replaceAll("\\s+", " ");
        assertTrue(text.contains("avec Pince, A-9,") && text.contains("étalonnage expiré depuis le 2 mai 2026"), text);
    }

    @Test
    void a_visit_that_is_not_closed_has_no_report() {
        UUID tenant = business.quebec();
        assertTrue(business.in(tenant, () -> sheets.of(UUID.randomUUID(), 1)).isEmpty());
    }
}
