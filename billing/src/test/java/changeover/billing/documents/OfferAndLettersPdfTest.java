package changeover.billing.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class OfferAndLettersPdfTest {

    @Test
    void an_offer_says_what_is_promised_and_what_it_costs() {
        String text = Judged.archived("offer-fr", OfferPdf.bytes(offer(Locale.CANADA_FRENCH, 9)));
        for (String said : new String[] {
            "Offre",
            "E-114",
            "Deux saisons",
            "Du 1er avril 2026 au 31 mars 2027",
            "Ce que nous promettons",
            "249,00",
            "286,29 $",
            "TVQ/QST 9,975 %",
            "Valable jusqu’au",
            "J’accepte l’offre E-114",
            "ne peut plus être tenu",
            "Licence RBQ : 0000-0000-01"
        }) {
            assertTrue(text.contains(said), said + " in\n" + text);
        }
    }

    @Test
    void a_long_offer_goes_over_pages_and_repeats_its_head() {
        byte[] pdf = OfferPdf.bytes(offer(Locale.CANADA, 70));
        String text = Judged.archived("offer-long", pdf);
        assertTrue(Judged.pages(pdf) >= 3);
        assertTrue(text.split("How often", -1).length > 3, text);
    }

    @Test
    void a_batch_of_letters_is_one_file_with_covers_and_papers() throws IOException {
        byte[] invoice = InvoicePdf.bytes(PaperExamples.french());
        List<LetterBatchPdf.Letter> letters = new ArrayList<>();
        for (int number = 1; number <= 5; number++) {
            letters.add(new LetterBatchPdf.Letter(
                    Locale.CANADA_FRENCH,
                    PaperExamples.withLogo(PaperExamples.MONTREUIL),
                    LocalDate.of(2026, 5, 29),
                    List.of("Solange Thivierge", "27, rue des Mélèzes", "Sainte-Odette (Québec)  J0X 0X0"),
                    "Votre facture F-2026-039" + number,
                    "Bonjour Solange Thivierge,\n\nvoici la facture.\n\nMerci,\nAtelier Lacasse-Montreuil inc.",
                    List.of(invoice)));
        }
        byte[] pdf = LetterBatchPdf.bytes(letters);
        Files.createDirectories(Path.of("target", "papers"));
        Files.write(Path.of("target", "papers", "letters.pdf"), pdf);
        assertEquals(10, Judged.pages(pdf));
        assertTrue(Judged.text(pdf).contains("Votre facture F-2026-0395"));
        assertTrue(pdf.length < 3 * invoice.length + 40_000, "size " + pdf.length);
        assertThrows(IllegalArgumentException.class, () -> LetterBatchPdf.bytes(List.of()));
    }

    /** Colon and per cent stand off by a space that never breaks; a semicolon does not (OQLF, from memory). */
    @Test
    void both_languages_have_the_same_words() {
        assertEquals(
                new TreeSet<>(Words.in(Locale.CANADA).all().keySet()),
                new TreeSet<>(Words.in(Locale.CANADA_FRENCH).all().keySet()));
        Words.in(Locale.CANADA_FRENCH).all().values().forEach(said -> {
            assertTrue(!said.matches(".*[^\u00a0][:%].*") || said.matches(".*[a-z]://.*"), said);
            assertTrue(!said.matches(".*[\u00a0 ];.*"), said);
        });
    }

    private static OfferSheet offer(Locale language, int promises) {
        List<OfferSheet.Promise> promised = new ArrayList<>();
        for (int number = 0; number < promises; number++) {
            promised.add(new OfferSheet.Promise(
                    "Machine " + number / 3,
                    "Clean the pan, clear the trap and prove the drain with water, a little first",
                    number % 2 == 0 ? "before each cooling season" : "every month",
                    number % 2 == 1));
        }
        return new OfferSheet(
                language,
                PaperExamples.MONTREUIL,
                "E-114",
                LocalDate.of(2026, 3, 20),
                LocalDate.of(2026, 4, 19),
                new InvoiceSheet.Party(
                        "Solange Thivierge",
                        List.of("27, rue des Mélèzes", "Sainte-Odette (Québec)  J0X 0X0"),
                        List.of()),
                List.of("27, rue des Mélèzes", "Sainte-Odette (Québec)  J0X 0X0"),
                "Deux saisons",
                LocalDate.of(2026, 4, 1),
                LocalDate.of(2027, 3, 31),
                List.of("Thermopompe extérieure", "Serpentin intérieur", "Échangeur d’air"),
                promised,
                List.of("1 avril au 15 juin 2026, 1 h 40", "1 septembre au 15 novembre 2026, 2 h 10"),
                List.of("L’hiver, au milieu\u00a0: sa fenêtre est passée."),
                List.of("2 filtres 16 × 25 × 4", "30 minutes de travail", "10\u00a0% de remise sur le reste"),
                PaperExamples.cad("249.00"),
                List.of(
                        new InvoiceSheet.TaxLine(
                                "TPS/GST", new BigDecimal("5"), "000000000 RT0001", PaperExamples.cad("12.45")),
                        new InvoiceSheet.TaxLine(
                                "TVQ/QST", new BigDecimal("9.975"), "0000000000 TQ0001", PaperExamples.cad("24.84"))),
                PaperExamples.cad("286.29"),
                List.of(
                        new OfferSheet.Instalment("1er avril 2026", PaperExamples.cad("124.50")),
                        new OfferSheet.Instalment("1er octobre 2026", PaperExamples.cad("124.50"))),
                List.of("Vous pouvez mettre fin à l’entente en tout temps\u00a0; vous payez le travail fait."));
    }
}
