package changeover.billing.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Statements as paper: both languages, over pages, owed and kept. */
class StatementPdfTest {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);

    private static Money cad(String amount) {
        return Money.of(amount, "CAD");
    }

    private static StatementSheet sheet(Locale language, int documents, String closing) {
        List<StatementSheet.Line> lines = new ArrayList<>();
        for (int number = 1; number <= documents; number++) {
            lines.add(new StatementSheet.Line(DAY, "invoice", "INV-" + number, cad("10.00"), cad("10.00")));
        }
        lines.add(new StatementSheet.Line(DAY, "payment", "114", cad("-10.00"), cad("0.00")));
        lines.add(new StatementSheet.Line(DAY, "returned", "114", cad("10.00"), cad(closing)));
        return new StatementSheet(
                language,
                new Letterhead("Lampe du Nord", List.of("1, rue du Four"), "555-0129", null, null, null),
                List.of("Ida Roe", "12, rue des Pins"),
                DAY.withDayOfMonth(1),
                DAY.withDayOfMonth(31),
                DAY.withDayOfMonth(31),
                cad("5.00"),
                lines,
                cad(closing),
                cad("60.00"));
    }

    @Test
    void what_stood_what_moved_and_what_stands() {
        String text = Judged.archived("statement", StatementPdf.bytes(sheet(Locale.CANADA, 2, "229.95")));
        for (String said : List.of(
                "Statement",
                "Ida Roe",
                "INV-2",
                "Returned by the bank 114",
                "Balance brought forward",
                "To pay",
                "$229.95",
                "Deposits kept for work to come, counted apart",
                "60.00")) {
            assertTrue(text.contains(said), said + " in\n" + text);
        }
    }

    @Test
    void a_long_one_repeats_its_head_and_a_credit_is_kept() {
        byte[] pdf = StatementPdf.bytes(sheet(Locale.CANADA_FRENCH, 80, "-3.50"));
        String text = Judged.archived("releve", pdf);
        int pages = Judged.pages(pdf);
        assertTrue(pages >= 3, "pages " + pages);
        assertEquals(pages, text.split("Montant", -1).length - 1);
        assertTrue(text.contains("Gardé pour vous"), text);
        assertTrue(text.contains("3,50 $"), text);
    }
}
