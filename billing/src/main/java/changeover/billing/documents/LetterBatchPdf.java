package changeover.billing.documents;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.openpdf.text.Document;
import org.openpdf.text.pdf.PdfReader;
import org.openpdf.text.pdf.PdfSmartCopy;

/** The letters of a batch in one file for the printer: for each a cover with the address, then its papers as they were kept. */
public final class LetterBatchPdf {

    /** Where a window envelope shows the address: 20 mm from the left, 50 mm from the top. */
    private static final float WINDOW_LEFT = 56.7f;

    private static final float WINDOW_TOP = 141.7f;

    private LetterBatchPdf() {}

    /**
     * A letter to print.
     *
     * @param to the name, then the lines of the address
     * @param papers PDFs that were kept
     */
    public record Letter(
            Locale language,
            Letterhead from,
            LocalDate day,
            List<String> to,
            String subject,
            String body,
            List<byte[]> papers) {
        public Letter {
            to = List.copyOf(to);
            papers = List.copyOf(papers);
        }
    }

    /**
     * All letters, one behind the other; it is for printing, not for keeping.
     *
     * @throws IllegalArgumentException for no letters
     */
    public static byte[] bytes(List<Letter> letters) {
        if (letters.isEmpty()) {
            throw new IllegalArgumentException("no letters");
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Document document = new Document();
        try {
            PdfSmartCopy copy = new PdfSmartCopy(document, bytes);
            document.open();
            for (Letter letter : letters) {
                add(copy, cover(letter));
                for (byte[] paper : letter.papers()) {
                    add(copy, paper);
                }
            }
            document.close();
        } catch (IOException inMemory) {
            throw new UncheckedIOException(inMemory);
        }
        return bytes.toByteArray();
    }

    private static void add(PdfSmartCopy copy, byte[] paper) throws IOException {
        try (PdfReader reader = new PdfReader(paper)) {
            for (int page = 1; page <= reader.getNumberOfPages(); page++) {
                copy.addPage(copy.getImportedPage(reader, page));
            }
            copy.freeReader(reader);
        }
    }

    private static byte[] cover(Letter letter) {
        Words words = Words.in(letter.language());
        Figures figures = new Figures(words);
        Flow flow = new Flow(words, letter.from().name(), words.say("letter.title"));
        Head.draw(flow, letter.from(), "", null);
        float base = Math.max(WINDOW_TOP, flow.y() + 24);
        for (String line : letter.to()) {
            base = flow.lines(
                    Typeface.REGULAR,
                    11,
                    14.5f,
                    Ink.INK,
                    WINDOW_LEFT,
                    base,
                    Lines.wrap(Typeface.REGULAR, 11, 240, line));
        }
        flow.page().textRight(Typeface.REGULAR, Type.TEXT, Ink.INK, Flow.RIGHT, base, 200, figures.day(letter.day()));
        flow.to(Math.max(base, 232));
        flow.down(14);
        flow.paragraph(Typeface.BOLD, 11, 15, Ink.INK, Flow.LEFT, Flow.WIDTH, letter.subject());
        flow.down(10);
        flow.paragraph(
                Typeface.REGULAR,
                10.5f,
                14.5f,
                Ink.INK,
                Flow.LEFT,
                440,
                letter.body().strip());
        return flow.bytes(words.language(), letter.subject(), null);
    }
}
