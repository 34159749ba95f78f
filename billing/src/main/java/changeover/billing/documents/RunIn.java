package changeover.billing.documents;

import java.util.List;

/** A bold word or two, and the text that runs on behind it. */
final class RunIn {

    private RunIn() {}

    static void draw(Flow flow, String bold, String text) {
        String head = Letters.plain(bold);
        float start = Typeface.BOLD.width(head, Type.TEXT) + 7;
        if (start > Flow.WIDTH / 2) {
            flow.paragraph(Typeface.BOLD, Type.TEXT, Type.TEXT_LINE, Ink.INK, Flow.LEFT, Flow.WIDTH, head);
            flow.paragraph(Typeface.REGULAR, Type.TEXT, Type.TEXT_LINE, Ink.INK, Flow.LEFT, Flow.WIDTH, text);
            return;
        }
        List<String> first = Lines.wrap(Typeface.REGULAR, Type.TEXT, Flow.WIDTH - start, text);
        flow.need(Type.TEXT_LINE);
        flow.down(Type.TEXT_LINE);
        float base = flow.y() - Type.TEXT_LINE * 0.27f;
        flow.page().text(Typeface.BOLD, Type.TEXT, Ink.INK, Flow.LEFT, base, head);
        flow.page().text(Typeface.REGULAR, Type.TEXT, Ink.INK, Flow.LEFT + start, base, first.getFirst());
        if (first.size() > 1) {
            String rest = String.join(" ", first.subList(1, first.size()));
            flow.paragraph(Typeface.REGULAR, Type.TEXT, Type.TEXT_LINE, Ink.INK, Flow.LEFT, Flow.WIDTH, rest);
        }
    }
}
