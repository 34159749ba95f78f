package changeover.billing.documents;

import changeover.billing.payments.Deposit;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The receipt of a deposit: who gave how much, when, how, for which work, and that it is kept for them until it pays an
 * invoice; it names no tax, since nothing is supplied yet.
 */
public final class ReceiptPdf {

    private final ReceiptSheet sheet;
    private final Words words;
    private final Figures figures;
    private final Flow flow;

    /** @param number as printed: {@code 12} */
    public record ReceiptSheet(
            Letterhead from, InvoiceSheet.Party to, List<String> home, String number, Deposit deposit, Words words) {}

    private ReceiptPdf(ReceiptSheet sheet, Flow flow) {
        this.sheet = sheet;
        this.words = sheet.words();
        this.figures = new Figures(words);
        this.flow = flow;
    }

    /** The paper as PDF/A-3b, in one language after the other, each from a page of its own. */
    static byte[] bytes(List<ReceiptSheet> sheets) {
        ReceiptSheet first = sheets.getFirst();
        Words words = first.words();
        String title = words.say("receipt.title") + " " + first.number();
        Flow flow = new Flow(words, first.from().name(), title);
        for (ReceiptSheet sheet : sheets) {
            if (sheet != first) {
                flow.speak(sheet.words());
            }
            new ReceiptPdf(sheet, flow).draw();
        }
        String phone = first.from().phone();
        return flow.bytesWith(
                words.language(), title, its -> phone == null ? null : its.say("question", "phone", phone));
    }

    private void draw() {
        Deposit deposit = sheet.deposit();
        Head.draw(flow, sheet.from(), words.say("receipt.title"), sheet.number());
        FactColumns facts = new FactColumns()
                .column(190)
                .fact(words.say("receipt.from"), sheet.to().name(), sheet.to().address())
                .column(192)
                .fact(words.say("receipt.home"), null, sheet.home())
                .column(Flow.WIDTH - 382)
                .fact(words.say("invoice.day"), null, List.of(figures.day(deposit.day())))
                .fact(
                        words.say("receipt.way"),
                        null,
                        List.of(deposit.way().wording().in(words.language()) + after(deposit.reference())));
        facts.draw(flow);
        flow.down(14);
        RunIn.draw(flow, words.say("receipt.for"), deposit.words());
        flow.down(10);
        new SumLines(flow, figures, 260).total(words.say("receipt.total"), deposit.amount());
        flow.down(16);
        flow.paragraph(
                Typeface.REGULAR,
                Type.TEXT,
                Type.TEXT_LINE,
                Ink.INK,
                Flow.LEFT,
                Flow.WIDTH,
                words.say("receipt.kept", Map.of("business", sheet.from().name())));
    }

    private static String after(@Nullable String reference) {
        return reference == null || reference.isBlank() ? "" : ", " + reference;
    }
}
