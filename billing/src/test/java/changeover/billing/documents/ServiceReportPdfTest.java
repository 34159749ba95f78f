package changeover.billing.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ServiceReportPdfTest {

    @Test
    void a_report_says_what_was_read_found_and_done_and_what_happens_next() {
        byte[] pdf = ServiceReportPdf.bytes(ReportExamples.english());
        String text = Judged.archived("report-en", pdf);
        for (String said : new String[] {
            "Visit report",
            "CLOSED 27 MAY 2026",
            "0.61 in.w.c.",
            "0.5 in.w.c. at most",
            "above, see 1",
            "16 to 22 °F",
            "Do not use · 1",
            "Urgent · 2",
            "Recommended · 3",
            "For your information · 4",
            "We look again in the fall.",
            "by 10 June 2026",
            "Never mix bleach with vinegar or another acid, ammonia or another cleaner",
            "Follow local codes; licensed people for gas, electricity and refrigerant.",
            "Received by: A. Fournier-Blake",
            "Version 2 of 2 June 2026",
            "15 October 2026",
            "Photo 1.2",
            "A working CO alarm"
        }) {
            assertTrue(text.contains(said), said + " in\n" + text);
        }
    }

    @Test
    void a_visit_without_findings_or_readings_says_so_in_french() {
        byte[] pdf = ServiceReportPdf.bytes(ReportExamples.without());
        String text = Judged.archived("report-fr-none", pdf);
        assertTrue(text.contains("Rien à signaler : tout ce que nous avons regardé est comme il se doit."), text);
        assertTrue(text.contains("Personne n’a reçu le travail : La clé est sous le pot."), text);
        assertTrue(text.contains("l’eau de Javel avec du vinaigre ou un autre acide, de l’ammoniaque"), text);
        assertEquals(1, Judged.pages(pdf));
    }

    @Test
    void thirty_findings_go_over_pages() {
        byte[] pdf = ServiceReportPdf.bytes(ReportExamples.ofMany(30));
        String text = Judged.archived("report-many", pdf);
        assertTrue(text.contains("Ne pas utiliser · 28"), text);
        assertTrue(Judged.pages(pdf) >= 6);
    }
}
