package changeover.deploy.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import org.openpdf.text.Document;
import org.openpdf.text.Font;
import org.openpdf.text.PageSize;
import org.openpdf.text.Paragraph;
import org.openpdf.text.Phrase;
import org.openpdf.text.pdf.BaseFont;
import org.openpdf.text.pdf.PdfPTable;
import org.openpdf.text.pdf.PdfWriter;

/** An invoice as the bare PDF library writes it: some paragraphs and a table, in one face. */
final class BarePage {
    static final String FACE = "Archivo-Regular.ttf";

    private BarePage() {}

    /** The bytes of the face that the product's papers use. */
    static byte[] face() throws IOException {
        try (InputStream bytes = changeover.billing.documents.Documents.class.getResourceAsStream("fonts/" + FACE)) {
            return Objects.requireNonNull(bytes).readAllBytes();
        }
    }

    /** The face read from its bytes once. */
    static BaseFont fromBytes() throws IOException {
        return BaseFont.createFont(FACE, BaseFont.WINANSI, BaseFont.EMBEDDED, true, face(), null);
    }

    /** @param rows of four cells each */
    static byte[] of(BaseFont face, List<String> head, List<List<String>> rows) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Document document = new Document(PageSize.LETTER);
        PdfWriter.getInstance(document, bytes);
        document.open();
        Font font = new Font(face, 10);
        head.forEach(line -> document.add(new Paragraph(line, font)));
        PdfPTable table = new PdfPTable(4);
        rows.forEach(row -> row.forEach(cell -> table.addCell(new Phrase(cell, font))));
        document.add(table);
        document.close();
        return bytes.toByteArray();
    }
}
