package changeover.billing.documents;

import changeover.contracts.money.Money;
import java.util.List;

/** The ledger of an invoice: quantity, a red double rule, what and why, price, discount, amount; every tax on its own line. */
final class InvoiceLedger {

    private static final float QUANTITY = 62;
    private static final float PRICE = 76;
    private static final float DISCOUNT = 70;
    private static final float AMOUNT = 80;
    private static final float PAD = 7;

    private final Flow flow;
    private final Words words;
    private final Figures figures;
    private final InvoiceSheet sheet;
    private final float red = Flow.LEFT + QUANTITY;
    private final float amountAt = Flow.RIGHT - AMOUNT;
    private final float discountAt;
    private final float priceAt;

    InvoiceLedger(Flow flow, Figures figures, InvoiceSheet sheet) {
        this.flow = flow;
        this.words = flow.words();
        this.figures = figures;
        this.sheet = sheet;
        boolean discounts = sheet.lines().stream().anyMatch(line -> line.included() || line.discount() != null);
        boolean prices = sheet.lines().stream().anyMatch(line -> line.unitPrice() != null);
        this.discountAt = discounts ? amountAt - DISCOUNT : amountAt;
        this.priceAt = prices ? discountAt - PRICE : discountAt;
    }

    void draw() {
        flow.down(20);
        flow.need(80);
        head();
        for (InvoiceSheet.Line line : sheet.lines()) {
            row(line);
        }
        totals();
    }

    private void head() {
        Canvas page = flow.page();
        float top = flow.y();
        float foot = top + 20;
        float base = top + 13.5f;
        page.line(Ink.INK, 0.9f, Flow.LEFT, top, Flow.RIGHT, top);
        page.line(Ink.INK, 0.9f, Flow.LEFT, foot, Flow.RIGHT, foot);
        page.text(Typeface.REGULAR, Type.SMALL, Ink.QUIET, Flow.LEFT, base, words.say("invoice.quantity"));
        page.text(Typeface.REGULAR, Type.SMALL, Ink.QUIET, red + 10, base, words.say("invoice.what"));
        if (priceAt < discountAt) {
            right("invoice.price", discountAt, base);
        }
        if (discountAt < amountAt) {
            right("invoice.discount", amountAt, base);
        }
        page.textRight(Typeface.REGULAR, Type.SMALL, Ink.QUIET, Flow.RIGHT, base, AMOUNT, words.say("invoice.amount"));
        rules(top, foot, true);
        flow.to(foot);
    }

    private void right(String caption, float x, float base) {
        flow.page().textRight(Typeface.REGULAR, Type.SMALL, Ink.QUIET, x - 6, base, PRICE, words.say(caption));
    }

    private void row(InvoiceSheet.Line line) {
        float room = priceAt - red - 18;
        List<String> what = Lines.wrap(Typeface.REGULAR, Type.TEXT, room, line.what());
        List<String> why = why(line, room);
        float height = PAD + what.size() * Type.TEXT_LINE + why.size() * Type.SMALL_LINE + 4;
        if (flow.need(height)) {
            head();
        }
        Canvas page = flow.page();
        float top = flow.y();
        float base = top + PAD + 9;
        String quantity = figures.number(line.quantity());
        String unit = unit(line.unit());
        String counted = Letters.plain(unit.isEmpty() ? quantity : quantity + "\u00a0" + unit);
        page.text(
                Typeface.REGULAR,
                Canvas.fitting(Typeface.REGULAR, Type.TEXT, QUANTITY - 6, counted),
                Ink.INK,
                Flow.LEFT,
                base,
                counted);
        float next = flow.lines(Typeface.REGULAR, Type.TEXT, Type.TEXT_LINE, Ink.INK, red + 10, base, what);
        flow.lines(Typeface.REGULAR, Type.SMALL, Type.SMALL_LINE, Ink.QUIET, red + 10, next - 0.5f, why);
        if (line.unitPrice() != null) {
            String per = unit.isEmpty() ? "" : " /\u00a0" + unit;
            number(discountAt, base, PRICE, figures.amount(line.unitPrice()) + per);
        }
        if (line.included()) {
            number(amountAt, base, DISCOUNT, words.say("invoice.included"));
        } else if (line.discount() != null && !line.discount().isZero()) {
            number(amountAt, base, DISCOUNT, figures.amount(line.discount().negated()));
        }
        page.textRight(
                Typeface.REGULAR, Type.TEXT, Ink.INK, Flow.RIGHT, base, AMOUNT - 6, figures.amount(line.amount()));
        page.line(Ink.RULE, 0.7f, Flow.LEFT, top + height, Flow.RIGHT, top + height);
        rules(top, top + height, true);
        flow.to(top + height);
    }

    private List<String> why(InvoiceSheet.Line line, float room) {
        String said = line.why() == null ? "" : line.why();
        if (sheet.must().taxByLine()) {
            String tax = words.say(line.taxed() ? "invoice.taxed" : "invoice.not-taxed");
            said = said.isBlank() ? tax : said + ", " + tax;
        }
        return said.isBlank() ? List.of() : Lines.wrap(Typeface.REGULAR, Type.SMALL, room, said);
    }

    private void number(float x, float base, float room, String text) {
        flow.page().textRight(Typeface.REGULAR, Type.TEXT, Ink.INK, x - 6, base, room - 8, text);
    }

    private String unit(String code) {
        return words.unit(code);
    }

    private void totals() {
        int rows = sheet.taxes().size() + (sheet.paid() == null ? 1 : 3);
        if (flow.need(rows * 20f + 40)) {
            head();
        }
        float top = flow.y();
        flow.page().line(Ink.INK, 0.9f, Flow.LEFT, top, Flow.RIGHT, top);
        sum(words.say("invoice.subtotal"), "", sheet.subtotal());
        for (InvoiceSheet.TaxLine tax : sheet.taxes()) {
            String number = tax.number() == null ? "" : tax.number();
            String percent = tax.percent() == null ? "" : " " + figures.percent(tax.percent());
            sum(tax.name() + percent, number, tax.amount());
        }
        Money left = sheet.total();
        if (sheet.paid() != null) {
            sum(words.say("invoice.total"), "", sheet.total());
            sum(words.say("invoice.paid"), "", sheet.paid().negated());
            left = sheet.total().minus(sheet.paid());
        }
        last(left);
        InvoiceSheet.Stamped stamped = sheet.stamped();
        if (stamped != null) {
            String said = stamped.word() + " " + figures.day(stamped.day());
            StampMark.draw(flow.page(), words, red + 110, (top + flow.y()) / 2, said);
        }
    }

    private void sum(String label, String number, Money amount) {
        Canvas page = flow.page();
        float top = flow.y();
        float base = top + 13.5f;
        float end = amountAt - 6;
        if (!number.isEmpty()) {
            page.textRight(Typeface.REGULAR, Type.SMALL, Ink.QUIET, end, base, 140, number);
            end -= Typeface.REGULAR.width(Letters.plain(number), Type.SMALL) + 4;
        }
        page.textRight(Typeface.REGULAR, Type.TEXT, Ink.INK, end, base, end - red - 10, label);
        page.textRight(Typeface.REGULAR, Type.TEXT, Ink.INK, Flow.RIGHT, base, AMOUNT - 6, figures.amount(amount));
        page.line(Ink.RULE, 0.7f, Flow.LEFT, top + 19, Flow.RIGHT, top + 19);
        rules(top, top + 19, false);
        flow.to(top + 19);
    }

    private void last(Money left) {
        Canvas page = flow.page();
        float top = flow.y();
        float foot = top + 28;
        String label =
                words.say(left.isZero() && sheet.paid() != null ? "invoice.settled" : "invoice.total." + sheet.kind());
        page.textRight(Typeface.HEADING, Type.TOTAL, Ink.INK, amountAt - 6, top + 19, amountAt - red - 20, label);
        page.textRight(Typeface.HEADING, Type.TOTAL, Ink.INK, Flow.RIGHT, top + 19, AMOUNT - 4, figures.money(left));
        rules(top, foot, false);
        page.line(Ink.INK, 0.9f, Flow.LEFT, foot, Flow.RIGHT, foot);
        page.line(Ink.INK, 0.9f, Flow.LEFT, foot + 2.4f, Flow.RIGHT, foot + 2.4f);
        flow.to(foot + 3);
    }

    private void rules(float top, float foot, boolean columns) {
        Canvas page = flow.page();
        page.line(Ink.RED, 0.7f, red, top, red, foot);
        page.line(Ink.RED, 0.7f, red + 2.2f, top, red + 2.2f, foot);
        if (columns && priceAt < discountAt) {
            page.line(Ink.RULE, 0.7f, priceAt, top, priceAt, foot);
        }
        if (columns && discountAt < amountAt) {
            page.line(Ink.RULE, 0.7f, discountAt, top, discountAt, foot);
        }
        page.line(Ink.RULE, 0.7f, amountAt, top, amountAt, foot);
    }
}
