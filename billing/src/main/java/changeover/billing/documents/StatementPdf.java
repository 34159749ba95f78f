package changeover.billing.documents;

import changeover.contracts.money.Money;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The statement: what stood before, a line for each document and payment with the balance after it, what stands now. */
public final class StatementPdf {

    private static final float DAY = 96;
    private static final float AMOUNT = 92;
    private static final float ROW = 20;

    private final StatementSheet sheet;
    private final Words words;
    private final Figures figures;
    private final Flow flow;
    private final float red = Flow.LEFT + DAY;
    private final float balanceAt = Flow.RIGHT - AMOUNT;
    private final float amountAt = balanceAt - AMOUNT;

    private StatementPdf(StatementSheet sheet, Flow flow) {
        this.sheet = sheet;
        this.words = Words.in(sheet.language());
        this.figures = new Figures(words);
        this.flow = flow;
    }

    /** The paper as PDF/A-3b. */
    public static byte[] bytes(StatementSheet sheet) {
        return bytes(List.of(sheet));
    }

    /** The same statement in one language after the other, each from a page of its own. */
    static byte[] bytes(List<StatementSheet> sheets) {
        StatementSheet first = sheets.getFirst();
        Words words = Words.in(first.language());
        Flow flow = new Flow(words, first.from().name(), words.say("statement.title"));
        for (StatementSheet sheet : sheets) {
            if (sheet != first) {
                flow.speak(Words.in(sheet.language()));
            }
            new StatementPdf(sheet, flow).draw();
        }
        String phone = first.from().phone();
        return flow.bytesWith(
                words.language(),
                words.say("statement.title") + " " + first.to().getFirst(),
                its -> phone == null ? null : its.say("question", "phone", phone));
    }

    private void draw() {
        Head.draw(flow, sheet.from(), words.say("statement.title"), null);
        new FactColumns()
                .column(260)
                .fact(
                        words.say("invoice.to"),
                        sheet.to().getFirst(),
                        sheet.to().subList(1, sheet.to().size()))
                .column(Flow.WIDTH - 260)
                .fact(
                        words.say("statement.period"),
                        null,
                        List.of(figures.day(sheet.first()), figures.day(sheet.until())))
                .fact(words.say("statement.made"), null, List.of(figures.day(sheet.day())))
                .draw(flow);
        flow.down(20);
        flow.need(80);
        head();
        row(figures.day(sheet.first()), words.say("statement.before"), null, sheet.opening());
        for (StatementSheet.Line line : sheet.lines()) {
            String what = words.say("statement." + line.what());
            row(
                    figures.day(line.day()),
                    line.said().isBlank() ? what : what + " " + line.said(),
                    line.amount(),
                    line.balance());
        }
        closing();
    }

    private void head() {
        Canvas page = flow.page();
        float top = flow.y();
        float base = top + 13.5f;
        page.line(Ink.INK, 0.9f, Flow.LEFT, top, Flow.RIGHT, top);
        page.line(Ink.INK, 0.9f, Flow.LEFT, top + ROW, Flow.RIGHT, top + ROW);
        page.text(Typeface.REGULAR, Type.SMALL, Ink.QUIET, Flow.LEFT, base, words.say("invoice.day"));
        page.text(Typeface.REGULAR, Type.SMALL, Ink.QUIET, red + 10, base, words.say("invoice.what"));
        page.textRight(
                Typeface.REGULAR, Type.SMALL, Ink.QUIET, balanceAt - 6, base, AMOUNT - 8, words.say("invoice.amount"));
        page.textRight(
                Typeface.REGULAR, Type.SMALL, Ink.QUIET, Flow.RIGHT, base, AMOUNT - 8, words.say("statement.balance"));
        rules(top, top + ROW);
        flow.to(top + ROW);
    }

    private void row(String day, String what, @Nullable Money amount, Money balance) {
        List<String> lines = Lines.wrap(Typeface.REGULAR, Type.TEXT, amountAt - red - 18, what);
        float height = 7 + lines.size() * Type.TEXT_LINE;
        if (flow.need(height)) {
            head();
        }
        Canvas page = flow.page();
        float top = flow.y();
        float base = top + 14;
        String plain = Letters.plain(day);
        page.text(
                Typeface.REGULAR,
                Canvas.fitting(Typeface.REGULAR, Type.TEXT, DAY - 6, plain),
                Ink.INK,
                Flow.LEFT,
                base,
                plain);
        flow.lines(Typeface.REGULAR, Type.TEXT, Type.TEXT_LINE, Ink.INK, red + 10, base, lines);
        if (amount != null) {
            page.textRight(
                    Typeface.REGULAR, Type.TEXT, Ink.INK, balanceAt - 6, base, AMOUNT - 8, figures.amount(amount));
        }
        page.textRight(Typeface.REGULAR, Type.TEXT, Ink.INK, Flow.RIGHT, base, AMOUNT - 8, figures.amount(balance));
        page.line(Ink.RULE, 0.7f, Flow.LEFT, top + height, Flow.RIGHT, top + height);
        rules(top, top + height);
        flow.to(top + height);
    }

    private void rules(float top, float foot) {
        Canvas page = flow.page();
        page.line(Ink.RED, 0.7f, red, top, red, foot);
        page.line(Ink.RED, 0.7f, red + 2.2f, top, red + 2.2f, foot);
        page.line(Ink.RULE, 0.7f, amountAt, top, amountAt, foot);
        page.line(Ink.RULE, 0.7f, balanceAt, top, balanceAt, foot);
    }

    private void closing() {
        flow.need(80);
        flow.down(8);
        Money closing = sheet.closing();
        boolean credit = closing.isNegative();
        SumLines sums = new SumLines(flow, figures, 300);
        if (!sheet.deposits().isZero()) {
            sums.line(words.say("statement.deposits"), "", sheet.deposits());
        }
        sums.total(
                words.say(credit ? "statement.credit-kept" : "statement.to-pay"), credit ? closing.negated() : closing);
        flow.down(10);
        flow.paragraph(
                Typeface.REGULAR,
                Type.TEXT,
                Type.TEXT_LINE,
                Ink.INK,
                Flow.LEFT,
                Flow.WIDTH,
                words.say(credit || closing.isZero() ? "statement.thanks" : "statement.pay"));
    }
}
