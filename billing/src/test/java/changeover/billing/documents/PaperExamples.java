package changeover.billing.documents;

import changeover.billing.documents.InvoiceSheet.Kind;
import changeover.billing.documents.InvoiceSheet.Line;
import changeover.billing.documents.InvoiceSheet.Must;
import changeover.billing.documents.InvoiceSheet.Note;
import changeover.billing.documents.InvoiceSheet.Party;
import changeover.billing.documents.InvoiceSheet.TaxLine;
import changeover.contracts.money.Money;
import changeover.contracts.pictures.Picture;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;

/** Invented papers of invented people. */
final class PaperExamples {

    static final Letterhead MONTREUIL = new Letterhead(
            "Atelier Lacasse-Montreuil inc.",
            List.of("410, chemin du Moulin", "Sainte-Odette (Québec)  J0X 0X0"),
            "555-0129",
            "bureau@example.com",
            "0000-0000-01",
            null);
    static final Letterhead TILLERY = new Letterhead(
            "Tillery & Voss Heating and Cooling",
            List.of("8 Foundry Street", "Port Ambrose, Ontario  K0X 0X0"),
            "555-0100",
            "desk@example.com",
            null,
            null);

    private PaperExamples() {}

    static Money cad(String amount) {
        return Money.of(amount, "CAD");
    }

    static InvoiceSheet french() {
        return new InvoiceSheet(
                Locale.CANADA_FRENCH,
                Kind.INVOICE,
                MONTREUIL,
                "F-2026-0391",
                LocalDate.of(2026, 5, 29),
                LocalDate.of(2026, 6, 28),
                null,
                new Party(
                        "Solange Thivierge",
                        List.of("27, rue des Mélèzes", "Sainte-Odette (Québec)  J0X 0X0"),
                        List.of()),
                new Party(
                        null,
                        List.of("27, rue des Mélèzes"),
                        List.of("le 27 mai 2026, par Étienne Roy-Sauvé", "Entente Deux saisons, 2026-2027")),
                null,
                Must.everything(),
                List.of(
                        line(
                                "1",
                                "E48",
                                "Visite du printemps, six appareils",
                                "compris dans l’entente",
                                null,
                                null,
                                "0.00"),
                        line("1", "C62", "Filtre 16 × 25 × 4, MERV 11", "compris dans l’entente", null, null, "0.00"),
                        line(
                                "30",
                                "MIN",
                                "Drain débouché, siphon refait",
                                "hors entente, remise de l’entente 10\u00a0%",
                                "95.00",
                                "4.75",
                                "42.75"),
                        line(
                                "1",
                                "C62",
                                "Interrupteur à flotteur FS-3",
                                "hors entente, remise de l’entente 10\u00a0%",
                                "19.17",
                                "1.92",
                                "17.25")),
                cad("60.00"),
                List.of(
                        new TaxLine("TPS/GST", new BigDecimal("5"), "000000000 RT0001", cad("3.00")),
                        new TaxLine("TVQ/QST", new BigDecimal("9.975"), "0000000000 TQ0001", cad("5.99"))),
                cad("68.99"),
                null,
                List.of(
                        new Note(
                                "Payer",
                                "Virement à bureau@example.com, mot F-2026-0391.\nChèque à l’ordre de l’Atelier. Carte\u00a0: 555-0129."),
                        new Note("Compris dans l’entente", "La visite et le filtre, 147,50 de travail et de pièces.")),
                null);
    }

    /** A plan of 249.00 sold in Quebec to somebody who reads English. */
    static InvoiceSheet plan() {
        return new InvoiceSheet(
                Locale.CANADA,
                Kind.INVOICE,
                withLogo(MONTREUIL),
                "F-2026-0392",
                LocalDate.of(2026, 4, 1),
                LocalDate.of(2026, 5, 1),
                null,
                new Party("Adèle Fournier-Blake", List.of("14 Larch Street", "Gatineau, Quebec  J0X 0X0"), List.of()),
                new Party(
                        null, List.of("14 Larch Street", "Gatineau, Quebec  J0X 0X0"), List.of("Agreement E-2026-114")),
                "PO 4711",
                Must.everything(),
                List.of(line("1", "ANN", "Two Seasons, 1 April 2026 to 31 March 2027", null, "249.00", null, "249.00")),
                cad("249.00"),
                List.of(
                        new TaxLine("TPS/GST", new BigDecimal("5"), "000000000 RT0001", cad("12.45")),
                        new TaxLine("TVQ/QST", new BigDecimal("9.975"), "0000000000 TQ0001", cad("24.84"))),
                cad("286.29"),
                cad("286.29"),
                List.of(),
                new InvoiceSheet.Stamped("Paid", LocalDate.of(2026, 4, 2)));
    }

    /** Long names, many lines, great amounts: two pages and more. */
    static InvoiceSheet ofMany(int lines) {
        List<Line> many = new ArrayList<>();
        for (int number = 1; number <= lines; number++) {
            many.add(line(
                    number % 7 == 0 ? "12.75" : "1",
                    number % 7 == 0 ? "HUR" : "C62",
                    "Part number " + number
                            + (number % 5 == 0
                                    ? ", with everything that belongs to it, the bracket," + " the clamp, the "
                                            + "very".repeat(20) + "longname and its four screws"
                                    : ""),
                    number % 3 == 0 ? "outside the agreement" : null,
                    "1234567.89",
                    number % 4 == 0 ? "123456.78" : null,
                    "11234567.89"));
        }
        return new InvoiceSheet(
                Locale.CANADA,
                Kind.CREDIT_NOTE,
                new Letterhead(
                        "The Very Long Named Heating, Cooling, Ventilation and Refrigeration Company of Port Ambrose and Area",
                        List.of(
                                "8 Foundry Street, Building 12, Suite 3400, Second Industrial Park",
                                "Port Ambrose, Ontario  K0X 0X0"),
                        "555-0100",
                        "a.very.long.address.of.the.office.for.invoices@example.com",
                        null,
                        null),
                "C-2026-000000391",
                LocalDate.of(2026, 5, 1),
                null,
                "F-2026-0391 of 29 May 2026",
                new Party(
                        "Wołodymyr Ștefănescu-Nguyễn, Administrators of the Estate of the late Bartholomew Featherstonehaugh",
                        List.of("27 Larch Street, Apartment 1204", "Port Ambrose, Ontario  K0X 0X0"),
                        List.of()),
                new Party(null, List.of("27 Larch Street"), List.of()),
                "PO-2026-" + "0".repeat(60),
                new Must(true, true, true),
                many,
                cad("987654321.00"),
                List.of(new TaxLine("HST", new BigDecimal("13"), "000000000 RT0001", cad("128395061.73"))),
                cad("1116049382.73"),
                null,
                List.of(),
                null);
    }

    static InvoiceSheet withLines(InvoiceSheet sheet, List<Line> lines) {
        return new InvoiceSheet(
                sheet.language(),
                sheet.kind(),
                sheet.from(),
                sheet.label(),
                sheet.day(),
                sheet.dueDay(),
                sheet.corrects(),
                sheet.buyer(),
                sheet.work(),
                sheet.purchaseOrder(),
                sheet.must(),
                lines,
                sheet.subtotal(),
                sheet.taxes(),
                sheet.total(),
                sheet.paid(),
                sheet.notes(),
                sheet.stamped());
    }

    static Line line(
            String quantity,
            String unit,
            String what,
            @Nullable String why,
            @Nullable String price,
            @Nullable String discount,
            String amount) {
        return new Line(
                new BigDecimal(quantity),
                unit,
                what,
                why,
                price == null ? null : cad(price),
                discount == null ? null : cad(discount),
                price == null,
                cad(amount),
                true);
    }

    static Letterhead withLogo(Letterhead head) {
        return new Letterhead(head.name(), head.address(), head.phone(), head.email(), head.licence(), photo(240, 160));
    }

    static Picture photo(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(new Color(0xDCEBEA));
        pen.fillRect(0, 0, width, height);
        pen.setColor(new Color(0x8A3A0A));
        pen.fillOval(width / 4, height / 4, width / 2, height / 2);
        pen.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException inMemory) {
            throw new UncheckedIOException(inMemory);
        }
        return Picture.redrawn(bytes.toByteArray());
    }
}
