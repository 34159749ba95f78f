package changeover.billing.documents;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** The invoice, the deposit invoice, the credit note and the estimate: one paper, told apart by its title and its total. */
public final class InvoicePdf {

    private final InvoiceSheet sheet;
    private final Words words;
    private final Figures figures;
    private final Flow flow;

    private InvoicePdf(InvoiceSheet sheet, Flow flow) {
        this.sheet = sheet;
        this.words = flow.words();
        this.figures = new Figures(words);
        this.flow = flow;
    }

    /**
     * The paper as PDF/A-3b.
     *
     * @throws IllegalArgumentException when something that must be printed is not there
     */
    public static byte[] bytes(InvoiceSheet sheet) {
        return bytes(List.of(sheet));
    }

    /** The same document in one language after the other, each from a page of its own; the first is the one that counts. */
    static byte[] bytes(List<InvoiceSheet> sheets) {
        InvoiceSheet first = sheets.getFirst();
        Words words = Words.in(first.language());
        Flow flow = new Flow(words, first.from().name(), first.label());
        for (InvoiceSheet sheet : sheets) {
            if (sheet != first) {
                flow.speak(Words.in(sheet.language()));
            }
            new InvoicePdf(sheet, flow).draw();
        }
        String phone = first.from().phone();
        return flow.bytesWith(
                words.language(),
                words.say("invoice." + first.kind()) + " " + first.label(),
                its -> phone == null ? null : its.say("question", "phone", phone));
    }

    private void draw() {
        check();
        String title = words.say("invoice." + sheet.kind());
        Head.draw(flow, sheet.from(), title, sheet.label());
        facts();
        new InvoiceLedger(flow, figures, sheet).draw();
        notes();
    }

    private void check() {
        InvoiceSheet.Must must = sheet.must();
        if (must.buyer() && sheet.buyer().name() == null) {
            throw new IllegalArgumentException(sheet.label() + ": the buyer's name is missing");
        }
    }

    private void facts() {
        FactColumns columns = new FactColumns()
                .column(190)
                .fact(words.say("invoice.to"), sheet.buyer().name(), all(sheet.buyer()))
                .column(192);
        InvoiceSheet.Party work = sheet.work();
        if (work != null) {
            columns.fact(words.say("invoice.work"), work.name(), all(work));
        }
        columns.column(Flow.WIDTH - 382);
        columns.fact(words.say("invoice.day"), null, List.of(figures.day(sheet.day())));
        if (sheet.dueDay() != null) {
            boolean estimate = sheet.kind() == InvoiceSheet.Kind.ESTIMATE;
            columns.fact(words.say(estimate ? "invoice.valid" : "invoice.due"), figures.day(sheet.dueDay()), List.of());
        }
        fact(columns, "invoice.corrects", sheet.corrects());
        fact(columns, "invoice.purchase-order", sheet.purchaseOrder());
        columns.draw(flow);
    }

    private void fact(FactColumns columns, String caption, @Nullable String fact) {
        if (fact != null) {
            columns.fact(words.say(caption), null, List.of(fact));
        }
    }

    private static List<String> all(InvoiceSheet.Party party) {
        return java.util.stream.Stream.concat(party.address().stream(), party.more().stream())
                .toList();
    }

    private void notes() {
        float room = (Flow.WIDTH - 20) / 2;
        for (int first = 0; first < sheet.notes().size(); first += 2) {
            List<InvoiceSheet.Note> pair = sheet.notes()
                    .subList(first, Math.min(first + 2, sheet.notes().size()));
            float deepest = 0;
            for (InvoiceSheet.Note note : pair) {
                deepest = Math.max(
                        deepest,
                        Lines.wrap(Typeface.REGULAR, Type.TEXT, room, note.text())
                                        .size()
                                * Type.TEXT_LINE);
            }
            flow.need(deepest + 34);
            float base = flow.y() + 24;
            for (int column = 0; column < pair.size(); column++) {
                InvoiceSheet.Note note = pair.get(column);
                float x = Flow.LEFT + column * (room + 20);
                flow.page().text(Typeface.REGULAR, Type.SMALL, Ink.QUIET, x, base, note.caption());
                List<String> lines = Lines.wrap(Typeface.REGULAR, Type.TEXT, room, note.text());
                flow.lines(Typeface.REGULAR, Type.TEXT, Type.TEXT_LINE, Ink.INK, x, base + Type.TEXT_LINE, lines);
            }
            flow.to(base + deepest);
        }
    }
}
