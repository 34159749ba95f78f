package changeover.billing.documents;

import java.util.ArrayList;
import java.util.List;

/** Says how many invoices of eight lines a second one core draws; run by hand. */
final class SpeedOfPapers {

    private SpeedOfPapers() {}

    public static void main(String[] arguments) {
        InvoiceSheet four = PaperExamples.french();
        List<InvoiceSheet.Line> lines = new ArrayList<>(four.lines());
        lines.addAll(four.lines());
        InvoiceSheet eight = PaperExamples.withLines(four, lines);
        for (int round = 0; round < 8; round++) {
            long start = System.nanoTime();
            int length = 0;
            int papers = 2000;
            for (int paper = 0; paper < papers; paper++) {
                length = InvoicePdf.bytes(eight).length;
            }
            double seconds = (System.nanoTime() - start) / 1e9;
            System.out.println(Math.round(papers / seconds) + " invoices/s, " + length + " bytes each");
        }
    }
}
