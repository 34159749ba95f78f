package changeover.billing.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.catalogue.FindingLevel;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

class CardAndTagPdfTest {

    private static final String LINK = "https://example.com/tillery/homes/0198f1de-7c1f-7e3a-9d3f-6a2b8c1d4e5f";

    @Test
    void ten_tags_stand_on_a_letter_page_and_their_codes_are_read_back() throws Exception {
        byte[] pdf = TagPdf.letter(tags(12, Locale.CANADA_FRENCH));
        String text = Judged.archived("tags-letter", pdf);
        assertEquals(2, Judged.pages(pdf));
        assertTrue(text.contains("L’air va vers la droite"), text);
        assertTrue(text.contains("16 × 25 × 4"), text);
        for (int place = 0; place < 10; place++) {
            assertEquals(LINK + place, code(pdf, place % 2 / 2.0, place / 2 / 5.0, 0.5, 0.2));
        }
    }

    @Test
    void a_label_is_90_by_50_millimetres() throws Exception {
        byte[] pdf = TagPdf.labels(tags(3, Locale.CANADA));
        Judged.archived("tags-labels", pdf);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals(3, document.getNumberOfPages());
            assertEquals(90, document.getPage(0).getMediaBox().getWidth() / 72 * 25.4, 0.1);
            assertEquals(50, document.getPage(0).getMediaBox().getHeight() / 72 * 25.4, 0.1);
        }
        assertEquals(LINK + "0", code(pdf, 0, 0, 1, 1));
    }

    @Test
    void a_house_card_says_on_one_page_what_one_must_know_before_the_door_opens() throws Exception {
        byte[] pdf = HouseCardPdf.bytes(card(Locale.CANADA, 4));
        String text = Judged.archived("card-en", pdf);
        for (String said : new String[] {
            "14 Larch Street",
            "Dog in the yard",
            "The key is with the neighbour",
            "555-0142",
            "Air goes to the right",
            "Still open",
            "Recommended, 27 May 2026",
            "Last visits",
            "Printed 7 October 2026"
        }) {
            assertTrue(text.contains(said), said + " in\n" + text);
        }
        assertEquals(1, Judged.pages(pdf));
        assertEquals(LINK, code(pdf, 0.75, 0, 0.25, 0.2));
    }

    @Test
    void a_home_with_every_kind_of_machine_takes_more_pages() {
        byte[] pdf = HouseCardPdf.bytes(card(Locale.CANADA_FRENCH, 14));
        String text = Judged.archived("card-fr-many", pdf);
        assertTrue(text.contains("Fiche de maison, 14 Larch Street, suite"), text);
        assertTrue(text.contains("Imprimée le 7 octobre 2026"), text);
    }

    /** Reads the only code in a part of the first page, given in fractions of it. */
    private static String code(byte[] pdf, double x, double y, double w, double h) throws IOException, ReaderException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, 200);
            int width = (int) (w * image.getWidth());
            int height = (int) (h * image.getHeight());
            int[] pixels = image.getRGB(
                    (int) (x * image.getWidth()), (int) (y * image.getHeight()), width, height, null, 0, width);
            RGBLuminanceSource seen = new RGBLuminanceSource(width, height, pixels);
            return new QRCodeReader()
                    .decode(new BinaryBitmap(new HybridBinarizer(seen)))
                    .getText();
        }
    }

    private static TagSheet tags(int count, Locale language) {
        List<TagSheet.Tag> tags = new ArrayList<>();
        for (int number = 0; number < count; number++) {
            boolean filter = number % 3 == 0;
            boolean core = number % 3 == 2;
            tags.add(new TagSheet.Tag(
                    filter
                            ? "Filter slot, hall closet"
                            : core ? "Exchanger core" : "Outdoor heat pump, north wall, second of three",
                    filter ? "16 × 25 × 4" : core ? "C-150" : "XW-36 HP 230 V LONGMODELNAME-2026",
                    filter ? Air.RIGHT : core ? Air.UP : null,
                    core,
                    filter || core
                            ? List.of(
                                    new CardSheet.Pair("Last change", "27 May 2026"),
                                    new CardSheet.Pair("Next check", "10 June 2026"))
                            : List.of(
                                    new CardSheet.Pair("Serial", "SN-000-4711-22"),
                                    new CardSheet.Pair("Installed", "3 May 2019"),
                                    new CardSheet.Pair("Last visit", "27 May 2026"),
                                    new CardSheet.Pair("Next check", "October 2026")),
                    LINK + number));
        }
        return new TagSheet(language, "Tillery & Voss Heating and Cooling", "555-0100", tags);
    }

    private static CardSheet card(Locale language, int units) {
        List<CardSheet.Unit> machines = new ArrayList<>();
        for (int number = 0; number < units; number++) {
            boolean filter = number % 3 == 1;
            machines.add(new CardSheet.Unit(
                    filter ? "Filter slot" : "Outdoor heat pump " + number,
                    filter ? "16 × 25 × 4" : "XW-36 HP",
                    filter ? Air.RIGHT : null,
                    filter
                            ? List.of(
                                    new CardSheet.Pair("Place", "Hall closet, behind the second panel, screwed"),
                                    new CardSheet.Pair("Last change", "27 May 2026"))
                            : List.of(
                                    new CardSheet.Pair("Serial", "SN-000-4711"),
                                    new CardSheet.Pair("Installed", "3 May 2019"),
                                    new CardSheet.Pair("Maker’s warranty", "until 3 May 2029"))));
        }
        return new CardSheet(
                language,
                "Tillery & Voss Heating and Cooling",
                "555-0100",
                LocalDate.of(2026, 10, 7),
                "14 Larch Street",
                List.of("Port Ambrose, Ontario  K0X 0X0"),
                List.of("Dog in the yard", "Suspected vermiculite in the attic"),
                "The key is with the neighbour at 16.\nRing twice.",
                List.of(),
                List.of(
                        new CardSheet.Person("Adèle Fournier-Blake", "signs, pays, lives here", "555-0142"),
                        new CardSheet.Person("Ray Blake", "lets us in", "555-0143")),
                false,
                machines,
                List.of(new CardSheet.OpenFinding(
                        FindingLevel.RECOMMENDED,
                        LocalDate.of(2026, 5, 27),
                        "Pan, trap and drain",
                        "Light rust on the pan. Look again in the fall.")),
                List.of(new CardSheet.Visit(
                        LocalDate.of(2026, 5, 27), "Mateo Ruiz", "The turn to cooling, six machines.")),
                "15 October 2026, 8:00",
                ReportYears.year(),
                LINK);
    }
}
