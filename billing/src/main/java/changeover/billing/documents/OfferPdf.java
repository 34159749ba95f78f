package changeover.billing.documents;

import java.util.List;
import java.util.Map;
import java.util.Objects;

/** A plan's offer: what is promised for which machine and how often, when, for how much, and a place for the yes. */
public final class OfferPdf {

    private static final float OFTEN = 300;
    private static final float WHO = 448;

    private final OfferSheet sheet;
    private final Words words;
    private final Figures figures;
    private final Flow flow;

    private OfferPdf(OfferSheet sheet) {
        this.sheet = sheet;
        this.words = Words.in(sheet.language());
        this.figures = new Figures(words);
        this.flow = new Flow(words, sheet.from().name(), words.say("offer.title") + " " + sheet.label());
    }

    /** The paper as PDF/A-3b. */
    public static byte[] bytes(OfferSheet sheet) {
        return new OfferPdf(sheet).draw();
    }

    private byte[] draw() {
        Head.draw(flow, sheet.from(), words.say("offer.title"), sheet.label());
        facts();
        flow.section(sheet.plan(), 40);
        flow.down(2);
        text(words.say(
                "offer.term", Map.of("from", figures.day(sheet.termFrom()), "until", figures.day(sheet.termLast()))));
        if (!sheet.machines().isEmpty()) {
            flow.down(2);
            RunIn.draw(flow, words.say("offer.machines"), String.join(" · ", sheet.machines()));
        }
        promises();
        list("offer.visits", sheet.visits());
        list("offer.included", sheet.included());
        list("offer.not-this-year", sheet.notThisYear());
        price();
        terms();
        yes();
        String phone = sheet.from().phone();
        return flow.bytes(
                words.language(),
                words.say("offer.title") + " " + sheet.label(),
                phone == null ? null : words.say("question", "phone", phone));
    }

    private void facts() {
        InvoiceSheet.Party to = sheet.to();
        new FactColumns()
                .column(190)
                .fact(words.say("invoice.to"), to.name(), to.address())
                .column(192)
                .fact(words.say("report.home"), null, sheet.home())
                .column(Flow.WIDTH - 382)
                .fact(words.say("invoice.day"), null, List.of(figures.day(sheet.offeredOn())))
                .fact(words.say("invoice.valid"), figures.day(sheet.validUntil()), List.of())
                .draw(flow);
    }

    private void promises() {
        if (sheet.promises().isEmpty()) {
            return;
        }
        flow.section(words.say("offer.promises"), 60);
        head();
        String machine = null;
        for (OfferSheet.Promise promise : sheet.promises()) {
            List<String> task = Lines.wrap(Typeface.REGULAR, Type.TEXT, OFTEN - 12, promise.task());
            List<String> often = Lines.wrap(Typeface.REGULAR, Type.TEXT, WHO - OFTEN - 10, promise.often());
            float height = Math.max(task.size(), often.size()) * Type.TEXT_LINE + 6;
            boolean another = promise.machine() != null && !Objects.equals(machine, promise.machine());
            if (flow.need(height + (another ? 18 : 0))) {
                head();
                another = promise.machine() != null;
            }
            if (another) {
                String name =
                        Flow.clip(Objects.requireNonNull(promise.machine()), Typeface.BOLD, Type.TEXT, Flow.WIDTH);
                flow.page().text(Typeface.BOLD, Type.TEXT, Ink.INK, Flow.LEFT, flow.y() + 14, name);
                flow.down(17);
            }
            machine = promise.machine();
            float base = flow.y() + 12;
            flow.lines(Typeface.REGULAR, Type.TEXT, Type.TEXT_LINE, Ink.INK, Flow.LEFT, base, task);
            flow.lines(Typeface.REGULAR, Type.TEXT, Type.TEXT_LINE, Ink.INK, Flow.LEFT + OFTEN, base, often);
            String who = words.say(promise.byYou() ? "offer.you" : "offer.us");
            flow.page().text(Typeface.REGULAR, Type.TEXT, Ink.INK, Flow.LEFT + WHO, base, who);
            flow.down(height);
            flow.page().line(Ink.RULE, 0.7f, Flow.LEFT, flow.y(), Flow.RIGHT, flow.y());
        }
    }

    private void head() {
        Canvas page = flow.page();
        float top = flow.y() + 2;
        page.line(Ink.INK, 0.9f, Flow.LEFT, top, Flow.RIGHT, top);
        page.text(Typeface.REGULAR, Type.SMALL, Ink.QUIET, Flow.LEFT, top + 13, words.say("report.what"));
        page.text(Typeface.REGULAR, Type.SMALL, Ink.QUIET, Flow.LEFT + OFTEN, top + 13, words.say("offer.often"));
        page.text(Typeface.REGULAR, Type.SMALL, Ink.QUIET, Flow.LEFT + WHO, top + 13, words.say("offer.who"));
        page.line(Ink.INK, 0.9f, Flow.LEFT, top + 19, Flow.RIGHT, top + 19);
        flow.to(top + 19);
    }

    private void list(String heading, List<String> lines) {
        if (lines.isEmpty()) {
            return;
        }
        flow.section(words.say(heading), 20);
        for (String line : lines) {
            flow.down(2);
            text(line);
        }
    }

    private void price() {
        flow.need(80 + (sheet.taxes().size() + sheet.instalments().size()) * 19f);
        flow.down(20);
        SumLines sums = new SumLines(flow, figures, 300);
        sums.line(words.say("offer.price"), "", sheet.price());
        for (InvoiceSheet.TaxLine tax : sheet.taxes()) {
            String percent = tax.percent() == null ? "" : " " + figures.percent(tax.percent());
            sums.line(tax.name() + percent, tax.number() == null ? "" : tax.number(), tax.amount());
        }
        sums.total(words.say("offer.total"), sheet.total());
        if (sheet.instalments().size() > 1) {
            flow.down(8);
            sums.begin(words.say("offer.instalments"));
            for (OfferSheet.Instalment instalment : sheet.instalments()) {
                sums.line(instalment.when(), "", instalment.amount());
            }
        }
    }

    private void terms() {
        flow.section(words.say("offer.terms"), 30);
        for (String term : sheet.terms()) {
            flow.down(3);
            small(term);
        }
        flow.down(3);
        small(words.say("caution.always"));
    }

    private void yes() {
        flow.need(86);
        flow.section(words.say("offer.yes"), 50);
        flow.down(2);
        text(words.say("offer.yes-words", Map.of("label", sheet.label(), "plan", sheet.plan())));
        flow.down(34);
        Canvas page = flow.page();
        float third = Flow.WIDTH / 3;
        String[] captions = {"offer.name", "offer.signature", "offer.day"};
        for (int at = 0; at < captions.length; at++) {
            float x = Flow.LEFT + at * third;
            page.line(Ink.INK, 0.75f, x, flow.y(), x + third - 16, flow.y());
            page.text(Typeface.REGULAR, Type.SMALL, Ink.QUIET, x, flow.y() + 12, words.say(captions[at]));
        }
        flow.down(16);
    }

    private void text(String text) {
        flow.paragraph(Typeface.REGULAR, Type.TEXT, Type.TEXT_LINE, Ink.INK, Flow.LEFT, Flow.WIDTH, text);
    }

    private void small(String text) {
        flow.paragraph(Typeface.REGULAR, Type.SMALL, Type.SMALL_LINE, Ink.INK, Flow.LEFT, Flow.WIDTH, text);
    }
}
