package changeover.billing.documents;

/** A stamp: violet, a double edge, a little crooked; only for what happened, on its day. */
final class StampMark {

    private StampMark() {}

    /** Draws it about the point. */
    static void draw(Canvas page, Words words, float x, float y, String text) {
        String said = Letters.plain(text.toUpperCase(words.language()));
        float size = 10.5f;
        float width = Typeface.BOLD.width(said, size) + 20;
        float left = x - width / 2;
        page.turned(2.5f, x, y, () -> {
            page.box(Ink.STAMP, 1.4f, left, y - 11, width, 22);
            page.box(Ink.STAMP, 0.6f, left + 2.5f, y - 8.5f, width - 5, 17);
            page.text(Typeface.BOLD, size, Ink.STAMP, left + 10, y + 3.7f, said);
        });
    }
}
