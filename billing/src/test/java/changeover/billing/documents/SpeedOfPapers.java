package changeover.billing.documents;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.openpdf.text.Document;
import org.openpdf.text.Font;
import org.openpdf.text.PageSize;
import org.openpdf.text.Paragraph;
import org.openpdf.text.Phrase;
import org.openpdf.text.pdf.PdfPTable;
import org.openpdf.text.pdf.PdfWriter;

/** Says how our invoice of eight lines stands to a bare OpenPDF page with the same face, both in turn; run by hand. */
final class SpeedOfPapers {

    private static final int PAPERS = 600;
    private static final int PAIRS = 9;

    private SpeedOfPapers() {}

    public static void main(String[] arguments) {
        InvoiceSheet four = PaperExamples.french();
        List<InvoiceSheet.Line> lines = new ArrayList<>(four.lines());
        lines.addAll(four.lines());
        InvoiceSheet eight = PaperExamples.withLines(four, lines);
        double[] ratios = new double[PAIRS];
        for (int pair = -2; pair < PAIRS; pair++) {
            double ours = aSecond(() -> InvoicePdf.bytes(eight));
            double bare = aSecond(() -> bare(eight));
            System.out.println(Math.round(ours) + " invoices/s, bare page " + Math.round(bare) + "/s");
            if (pair >= 0) {
                ratios[pair] = ours / bare;
            }
        }
        Arrays.sort(ratios);
        System.out.println("ratio " + ratios[PAIRS / 2] + ", " + InvoicePdf.bytes(eight).length + " bytes, bare "
                + bare(eight).length);
    }

    private static double aSecond(java.util.function.Supplier<byte[]> paper) {
        long start = System.nanoTime();
        for (int count = 0; count < PAPERS; count++) {
            var _ = paper.get();
        }
        return PAPERS / ((System.nanoTime() - start) / 1e9);
    }

    private static byte[] bare(InvoiceSheet sheet) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Document document = new Document(PageSize.LETTER);
        PdfWriter.getInstance(document, bytes);
        document.open();
        Font font = new Font(Typeface.REGULAR.font(), 10);
        document.add(new Paragraph(sheet.from().name(), font));
        document.add(new Paragraph(sheet.label() + " " + sheet.day(), font));
        PdfPTable table = new PdfPTable(5);
        for (InvoiceSheet.Line line : sheet.lines()) {
            table.addCell(new Phrase(line.quantity().toPlainString(), font));
            table.addCell(new Phrase(line.what(), font));
            table.addCell(new Phrase(String.valueOf(line.unitPrice()), font));
            table.addCell(new Phrase(String.valueOf(line.discount()), font));
            table.addCell(new Phrase(line.amount().decimal(), font));
        }
        sheet.taxes().forEach(tax -> {
            table.addCell(new Phrase(tax.name(), font));
            table.addCell(new Phrase(tax.amount().decimal(), font));
            table.completeRow();
        });
        document.add(table);
        document.close();
        return bytes.toByteArray();
    }
}
