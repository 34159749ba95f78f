package changeover.billing.documents;

/** A machine as a tag: two cut corners and a hole, its name, what one looks for in big type, then facts on ruled lines. */
final class UnitTag {

    private static final float CUT = 9;
    private static final float INDENT = 24;
    private static final float ROW = 12.5f;

    private UnitTag() {}

    static float height(CardSheet.Unit unit, float width) {
        float big = unit.big() == null ? 0 : 20;
        int rows = 0;
        for (CardSheet.Pair fact : unit.facts()) {
            rows += Lines.wrap(Typeface.BOLD, Type.SMALL, valueRoom(fact, width), fact.value())
                    .size();
        }
        return 22 + big + (unit.air() == null ? 0 : 12) + rows * ROW + 6;
    }

    static void draw(Canvas page, Words words, CardSheet.Unit unit, float x, float y, float w, float h) {
        page.outline(Ink.INK, 0.9f, x + CUT, y, x + w, y, x + w, y + h, x + CUT, y + h, x, y + h - CUT, x, y + CUT);
        page.circle(Ink.INK, 0.9f, x + 11, y + h / 2, 3.4f);
        float left = x + INDENT;
        float right = x + w - 9;
        float base = y + 15;
        page.text(
                Typeface.BOLD, 10.5f, Ink.INK, left, base, Flow.clip(unit.name(), Typeface.BOLD, 10.5f, right - left));
        base += 4;
        Air air = unit.air();
        if (unit.big() != null) {
            base += 17;
            String big = Letters.plain(unit.big());
            float size = Canvas.fitting(Typeface.HEADING, 15, right - left - (air == null ? 0 : 36), big);
            page.text(Typeface.HEADING, size, Ink.INK, left, base, big);
        }
        if (air != null) {
            air.draw(page, Ink.INK, right - 15, base - 5, 28);
            base += 12;
            page.text(Typeface.REGULAR, Type.SMALL, Ink.INK, left, base, words.say("tag.air", "way", air.words(words)));
        }
        base += 1;
        for (CardSheet.Pair fact : unit.facts()) {
            for (String line : Lines.wrap(Typeface.BOLD, Type.SMALL, valueRoom(fact, w), fact.value())) {
                base += ROW;
                page.textRight(Typeface.BOLD, Type.SMALL, Ink.INK, right, base, right - left, line);
            }
            int lines = Lines.wrap(Typeface.BOLD, Type.SMALL, valueRoom(fact, w), fact.value())
                    .size();
            page.text(
                    Typeface.REGULAR,
                    Type.SMALL,
                    Ink.QUIET,
                    left,
                    base - (lines - 1) * ROW,
                    Letters.plain(fact.caption()));
            page.line(Ink.RULE, 0.5f, left, base + 2.8f, right, base + 2.8f);
        }
    }

    private static float valueRoom(CardSheet.Pair fact, float width) {
        float caption = Typeface.REGULAR.width(Letters.plain(fact.caption()), Type.SMALL);
        return Math.max(60, width - INDENT - 9 - caption - 8);
    }
}
