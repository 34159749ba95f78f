package changeover.billing.documents;

import changeover.contracts.money.Money;

/** Sums at the right of a paper: a line each on faint rules, the total in large type on a double rule. */
final class SumLines {

    private static final float AMOUNT = 84;

    private final Flow flow;
    private final Figures figures;
    private final float left;
    private boolean begun;

    SumLines(Flow flow, Figures figures, float width) {
        this.flow = flow;
        this.figures = figures;
        this.left = Flow.RIGHT - width;
    }

    /** A quiet caption over the lines that follow. */
    void begin(String caption) {
        flow.page().text(Typeface.REGULAR, Type.SMALL, Ink.QUIET, left, flow.y() + 12, caption);
        flow.down(16);
        begun = false;
    }

    void line(String label, String number, Money amount) {
        Canvas page = flow.page();
        float top = flow.y();
        if (!begun) {
            page.line(Ink.INK, 0.9f, left, top, Flow.RIGHT, top);
            begun = true;
        }
        float base = top + 13.5f;
        float end = Flow.RIGHT - AMOUNT - 6;
        if (!number.isEmpty()) {
            page.textRight(Typeface.REGULAR, Type.SMALL, Ink.QUIET, end, base, 120, number);
            end -= Typeface.REGULAR.width(Letters.plain(number), Type.SMALL) + 4;
        }
        page.textRight(Typeface.REGULAR, Type.TEXT, Ink.INK, end, base, end - left, label);
        page.textRight(Typeface.REGULAR, Type.TEXT, Ink.INK, Flow.RIGHT, base, AMOUNT - 6, figures.amount(amount));
        page.line(Ink.RULE, 0.7f, left, top + 19, Flow.RIGHT, top + 19);
        flow.to(top + 19);
    }

    void total(String label, Money amount) {
        Canvas page = flow.page();
        float top = flow.y();
        float end = Flow.RIGHT - AMOUNT - 6;
        page.textRight(Typeface.HEADING, Type.TOTAL, Ink.INK, end, top + 19, end - left, label);
        page.textRight(Typeface.HEADING, Type.TOTAL, Ink.INK, Flow.RIGHT, top + 19, AMOUNT - 2, figures.money(amount));
        page.line(Ink.INK, 0.9f, left, top + 28, Flow.RIGHT, top + 28);
        page.line(Ink.INK, 0.9f, left, top + 30.4f, Flow.RIGHT, top + 30.4f);
        flow.to(top + 31);
    }
}
