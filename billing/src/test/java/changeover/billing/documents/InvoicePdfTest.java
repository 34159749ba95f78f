package changeover.billing.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class InvoicePdfTest {

    @Test
    void a_french_invoice_says_everything_in_french() {
        String text = Judged.archived("invoice-fr", InvoicePdf.bytes(PaperExamples.french()));
        for (String said : new String[] {
            "Facture",
            "F-2026-0391",
            "29 mai 2026",
            "28 juin 2026",
            "Licence RBQ : 0000-0000-01",
            "TPS/GST 5 %",
            "TVQ/QST 9,975 %",
            "000000000 RT0001",
            "0000000000 TQ0001",
            "68,99 $",
            "À payer",
            "95,00 / min",
            "–4,75",
            "F-2026-0391, page 1 de 1",
            "Une question : 555-0129",
            "compris dans l’entente"
        }) {
            assertTrue(text.contains(said), said + " in\n" + text);
        }
        assertFalse(text.contains("14,975"));
    }

    @Test
    void a_plan_of_249_in_quebec_shows_both_taxes_apart_and_that_it_is_paid() {
        byte[] pdf = InvoicePdf.bytes(PaperExamples.plan());
        String text = Judged.archived("invoice-plan", pdf);
        for (String said : new String[] {
            "12.45",
            "24.84",
            "286.29",
            "TPS/GST 5%",
            "TVQ/QST 9.975%",
            "PAID 2 APRIL 2026",
            "Nothing to pay",
            "PO 4711",
            "1 May 2026"
        }) {
            assertTrue(text.contains(said), said + " in\n" + text);
        }
        assertFalse(text.contains("14.975"));
        assertEquals(1, Judged.pages(pdf));
    }

    @Test
    void a_long_credit_note_repeats_its_head_and_keeps_its_totals_together() {
        byte[] pdf = InvoicePdf.bytes(PaperExamples.ofMany(60));
        String text = Judged.archived("credit-long", pdf);
        int pages = Judged.pages(pdf);
        assertTrue(pages >= 3, "pages " + pages);
        assertEquals(pages, text.split("Quantity", -1).length - 1);
        assertTrue(text.contains("page " + pages + " of " + pages), text);
        assertTrue(text.contains("Wolodymyr Stefanescu-Nguyen"), text);
        assertTrue(text.contains("$1,116,049,382.73"), text);
        assertTrue(text.contains("Corrects"), text);
    }
}
