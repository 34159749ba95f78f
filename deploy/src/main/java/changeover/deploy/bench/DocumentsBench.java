package changeover.deploy.bench;

import changeover.billing.documents.InvoicePdf;
import changeover.billing.documents.InvoiceSheet;
import changeover.billing.documents.Letterhead;
import changeover.contracts.money.Money;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.openpdf.text.pdf.BaseFont;
import org.openpdf.text.pdf.PdfReader;
import org.openpdf.text.pdf.parser.PdfTextExtractor;

/**
 * Invoices a second as the product draws them, over a bare page of the PDF library in the same face, which is read from its bytes
 * once; beside them the same bare page with the face read from its file for every page, and in a face that every reader has.
 */
final class DocumentsBench {
    private static final int LINES = 8;
    private static final int PAPERS = 600;

    /** Papers of each side before the first pair counts: until then most of the time goes to the compiler. */
    private static final int WARM_UP = 6_000;

    private static final List<String> HEAD =
            List.of("Bench, 1 Example Street", "Invoice 1", "Customer 1, 2 Example Street, Sherbrooke QC J1H 0A0");

    private DocumentsBench() {}

    private interface Paper {
        byte[] draw() throws IOException;
    }

    /** The last line; empty when a sentence on standard error has said why there is none. */
    static Optional<String> run(List<String> words) throws IOException {
        Optional<Integer> papers = papers(words);
        if (papers.isEmpty()) {
            System.err.println("deploy/bench documents takes --size N, a number of papers from 1 to 100000.");
            return Optional.empty();
        }
        return Optional.of(measure(papers.get()));
    }

    private static Optional<Integer> papers(List<String> words) {
        if (words.isEmpty()) {
            return Optional.of(PAPERS);
        }
        boolean understood = words.size() == 2
                && words.getFirst().equals("--size")
                && words.get(1).matches("[1-9][0-9]{0,4}");
        return understood ? Optional.of(Integer.valueOf(words.get(1))) : Optional.empty();
    }

    private static String measure(int papers) throws IOException {
        InvoiceSheet sheet = sheet();
        List<List<String>> rows = rows(sheet);
        BaseFont once = BarePage.fromBytes();
        BaseFont everywhere = BaseFont.createFont(BaseFont.HELVETICA, BaseFont.WINANSI, BaseFont.NOT_EMBEDDED);
        Path file = Files.createTempDirectory("changeover-face").resolve(BarePage.FACE);
        Files.write(file, BarePage.face());
        Paper ours = () -> InvoicePdf.bytes(sheet);
        Paper bare = () -> BarePage.of(once, HEAD, rows);
        Paper again = () -> BarePage.of(
                BaseFont.createFont(file.toString(), BaseFont.WINANSI, BaseFont.EMBEDDED, false, null, null),
                HEAD,
                rows);
        Paper known = () -> BarePage.of(everywhere, HEAD, rows);
        Ratios ratios = Ratios.ofRates("documents", "0.6", "1.2");
        boolean same = true;
        int warm = Math.max(2, WARM_UP / papers);
        for (int pair = -warm; pair < Ratios.PAIRS; pair++) {
            long before = pair % 2 == 0 ? 0 : time(bare, papers);
            long product = time(ours, papers);
            long plain = pair % 2 == 0 ? time(bare, papers) : before;
            if (pair >= 0) {
                ratios.add(plain, product);
                same &= says(ours.draw(), sheet) && says(bare.draw(), sheet);
                System.out.println(
                        "documents pair %d: %d invoices/s, bare %d/s, face from its file each time %d/s, built-in face %d/s"
                                .formatted(
                                        pair + 1,
                                        rate(papers, product),
                                        rate(papers, plain),
                                        rate(papers, time(again, papers)),
                                        rate(papers, time(known, papers))));
            }
        }
        System.out.println("documents bytes: %d, bare %d".formatted(ours.draw().length, bare.draw().length));
        Files.delete(file);
        Files.delete(file.getParent());
        return ratios.line((long) Ratios.PAIRS * papers, same);
    }

    private static long time(Paper paper, int papers) throws IOException {
        long from = System.nanoTime();
        long bytes = 0;
        for (int count = 0; count < papers; count++) {
            bytes += paper.draw().length;
        }
        if (bytes == 0) {
            throw new IllegalStateException("empty papers");
        }
        return System.nanoTime() - from;
    }

    private static long rate(int papers, long nanos) {
        return papers * 1_000_000_000L / nanos;
    }

    /** Both sides print every line and the total. */
    private static boolean says(byte[] paper, InvoiceSheet sheet) throws IOException {
        try (PdfReader reader = new PdfReader(paper)) {
            String text = new PdfTextExtractor(reader).getTextFromPage(1);
            return text.contains(sheet.total().decimal())
                    && sheet.lines().stream().allMatch(line -> text.contains(line.what()));
        }
    }

    private static InvoiceSheet sheet() {
        List<InvoiceSheet.Line> lines = IntStream.rangeClosed(1, LINES)
                .mapToObj(at -> new InvoiceSheet.Line(
                        BigDecimal.ONE,
                        "C62",
                        "Item " + at,
                        "Not covered by a plan.",
                        cad("100.00"),
                        null,
                        false,
                        cad("100.00"),
                        true))
                .toList();
        return new InvoiceSheet(
                Locale.CANADA,
                InvoiceSheet.Kind.INVOICE,
                new Letterhead("Bench", List.of("1 Example Street"), "555-0100", "desk@example.com", null, null),
                "F-2026-0001",
                LocalDate.of(2026, 4, 1),
                LocalDate.of(2026, 5, 1),
                null,
                new InvoiceSheet.Party("Customer 1", List.of("2 Example Street", "Sherbrooke QC J1H 0A0"), List.of()),
                new InvoiceSheet.Party(null, List.of("2 Example Street"), List.of()),
                null,
                InvoiceSheet.Must.everything(),
                lines,
                cad("800.00"),
                List.of(
                        new InvoiceSheet.TaxLine("GST", new BigDecimal("5"), "123456789 RT0001", cad("40.00")),
                        new InvoiceSheet.TaxLine("QST", new BigDecimal("9.975"), "1234567890 TQ0001", cad("79.80"))),
                cad("919.80"),
                null,
                List.of(),
                null);
    }

    private static List<List<String>> rows(InvoiceSheet sheet) {
        List<List<String>> rows = new ArrayList<>();
        sheet.lines()
                .forEach(line -> rows.add(List.of(
                        "1", line.what(), line.amount().decimal(), line.amount().decimal())));
        sheet.taxes()
                .forEach(
                        tax -> rows.add(List.of("", tax.name(), "", tax.amount().decimal())));
        rows.add(List.of("", "Total", "", sheet.total().decimal()));
        return rows;
    }

    private static Money cad(String amount) {
        return Money.of(amount, "CAD");
    }
}
