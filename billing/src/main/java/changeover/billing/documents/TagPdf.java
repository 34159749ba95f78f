package changeover.billing.documents;

import java.util.List;

/** Stickers of 90 x 50 mm for filter and unit: the size in big type, the arrow and its words, the dates, a QR code. */
public final class TagPdf {

    /** 90 and 50 millimetres in points. */
    static final float WIDTH = 255.12f;

    static final float HEIGHT = 141.73f;

    private static final int COLUMNS = 2;
    private static final int ROWS = 5;
    private static final float EDGE = 8;
    private static final float QR = 74;

    private final TagSheet sheet;
    private final Words words;

    private TagPdf(TagSheet sheet) {
        this.sheet = sheet;
        this.words = Words.in(sheet.language());
    }

    /** Ten to a Letter page, to be cut. */
    public static byte[] letter(TagSheet sheet) {
        TagPdf tags = new TagPdf(sheet);
        PaperFile file = PaperFile.letter();
        float left = (PaperFile.LETTER_WIDTH - COLUMNS * WIDTH) / 2;
        float top = (PaperFile.LETTER_HEIGHT - ROWS * HEIGHT) / 2;
        Canvas page = file.newPage();
        for (int number = 0; number < sheet.tags().size(); number++) {
            int place = number % (COLUMNS * ROWS);
            if (number > 0 && place == 0) {
                page = file.newPage();
            }
            float x = left + place % COLUMNS * WIDTH;
            float y = top + place / COLUMNS * HEIGHT;
            tags.tag(page, sheet.tags().get(number), x, y);
        }
        return tags.bytes(file);
    }

    /** One to a page of its own size, for a label printer. */
    public static byte[] labels(TagSheet sheet) {
        TagPdf tags = new TagPdf(sheet);
        PaperFile file = new PaperFile(WIDTH, HEIGHT);
        sheet.tags().forEach(tag -> tags.tag(file.newPage(), tag, 0, 0));
        return tags.bytes(file);
    }

    private byte[] bytes(PaperFile file) {
        if (file.pages().isEmpty()) {
            file.newPage();
        }
        return file.bytes(words.language(), words.say("tag.title"), sheet.business());
    }

    private void tag(Canvas page, TagSheet.Tag tag, float x, float y) {
        page.box(Ink.BLACK, 1, x + 2, y + 2, WIDTH - 4, HEIGHT - 4);
        float left = x + 14;
        float right = x + WIDTH - EDGE - QR;
        float room = right - left - 6;
        String name = Flow.clip(tag.name(), Typeface.BOLD, 10.5f, WIDTH - 28);
        page.text(Typeface.BOLD, 10.5f, Ink.BLACK, left, y + 19, name);
        float bigRoom = tag.air() == null ? room : room - 50;
        float base = big(page, tag, left, y, bigRoom);
        Air air = tag.air();
        if (air != null) {
            air.draw(page, Ink.BLACK, right - 32, y + 43, 42);
            String said = words.say(tag.core() ? "tag.core" : "tag.air", "way", air.words(words));
            page.text(
                    Typeface.BOLD,
                    Canvas.fitting(Typeface.BOLD, Type.SMALL, room, Letters.plain(said)),
                    Ink.BLACK,
                    left,
                    Math.max(base, y + 74),
                    said);
            base = Math.max(base, y + 74) + 3;
        }
        facts(page, tag, left, base, room, y + HEIGHT - 20);
        QrMark.draw(page, tag.link(), right, y + 28, QR);
        String phone = sheet.phone() == null ? "" : "  " + sheet.phone();
        String foot = Letters.plain(sheet.business() + phone);
        page.line(Ink.BLACK, 0.6f, left, y + HEIGHT - 19, x + WIDTH - 12, y + HEIGHT - 19);
        page.text(
                Typeface.REGULAR,
                Canvas.fitting(Typeface.REGULAR, Type.SMALL, WIDTH - 26, foot),
                Ink.BLACK,
                left,
                y + HEIGHT - 8.5f,
                foot);
    }

    private static float big(Canvas page, TagSheet.Tag tag, float left, float y, float room) {
        float size = 19;
        List<String> lines = Lines.wrap(Typeface.HEADING, size, room, tag.big());
        while (size > 9 && lines.size() > (size > 14 ? 1 : 2)) {
            size -= 0.5f;
            lines = Lines.wrap(Typeface.HEADING, size, room, tag.big());
        }
        float base = y + 26 + size;
        for (String line : lines.subList(0, Math.min(2, lines.size()))) {
            page.text(Typeface.HEADING, size, Ink.BLACK, left, base, line);
            base += size + 2;
        }
        return base + 4;
    }

    private static void facts(Canvas page, TagSheet.Tag tag, float left, float from, float room, float until) {
        float base = from + 9;
        for (CardSheet.Pair fact : tag.facts()) {
            if (base > until) {
                return;
            }
            String caption = Letters.plain(fact.caption());
            page.text(Typeface.REGULAR, Type.SMALL, Ink.BLACK, left, base, caption);
            float used = Typeface.REGULAR.width(caption, Type.SMALL) + 6;
            page.textRight(Typeface.BOLD, Type.SMALL, Ink.BLACK, left + room, base, room - used, fact.value());
            page.line(Ink.RULE, 0.5f, left, base + 2.6f, left + room, base + 2.6f);
            base += 12.5f;
        }
    }
}
