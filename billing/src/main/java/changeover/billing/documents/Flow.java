package changeover.billing.documents;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A Letter paper filled from the top: when a piece doesn't fit, the next page begins with the paper's running head. */
final class Flow {

    static final float LEFT = 42.52f;
    static final float RIGHT = PaperFile.LETTER_WIDTH - LEFT;
    static final float WIDTH = RIGHT - LEFT;
    static final float TOP = LEFT;
    static final float FOOT_RULE = PaperFile.LETTER_HEIGHT - LEFT - 12;
    static final float BOTTOM = FOOT_RULE - 10;

    private final PaperFile file = PaperFile.letter();
    private final List<Words> spoken = new ArrayList<>();
    private Words words;
    private final String sender;
    private final String paper;
    private Canvas page;
    private float y = TOP;

    /**
     * @param sender the business's name, at the head of the pages after the first
     * @param paper what the paper is called in its foot
     */
    Flow(Words words, String sender, String paper) {
        this.words = words;
        this.sender = sender;
        this.paper = paper;
        this.page = newPage();
    }

    private Canvas newPage() {
        spoken.add(words);
        return file.newPage();
    }

    /** From here on in another language: a page of its own, as if it were the first. */
    void speak(Words other) {
        words = other;
        page = newPage();
        y = TOP;
    }

    PaperFile file() {
        return file;
    }

    Canvas page() {
        return page;
    }

    Words words() {
        return words;
    }

    float y() {
        return y;
    }

    void down(float points) {
        y += points;
    }

    void to(float where) {
        y = where;
    }

    float left() {
        return BOTTOM - y;
    }

    /** Begins a new page when the piece doesn't fit on this one, and says whether it did. */
    boolean need(float height) {
        if (y + height <= BOTTOM || y <= TOP + 30) {
            return false;
        }
        nextPage();
        return true;
    }

    void nextPage() {
        page = newPage();
        y = TOP + Type.SMALL;
        page.text(Typeface.BOLD, Type.SMALL, Ink.QUIET, LEFT, y, clip(sender, Typeface.BOLD, Type.SMALL, WIDTH * 0.6f));
        page.textRight(
                Typeface.REGULAR,
                Type.SMALL,
                Ink.QUIET,
                RIGHT,
                y,
                WIDTH * 0.38f,
                words.say("continued", "paper", paper));
        y += 5;
        page.line(Ink.INK, 0.9f, LEFT, y, RIGHT, y);
        y += 14;
    }

    /** A heading that is not left alone at the foot of a page. */
    void section(String heading, float withAtLeast) {
        need(25 + withAtLeast);
        y += 19.5f;
        page.text(Typeface.HEADING, Type.SECTION, Ink.INK, LEFT, y, heading);
        y += 5.5f;
    }

    /** Text over the whole width, over pages where it must. */
    void paragraph(Typeface face, float size, float line, Ink ink, float x, float room, String text) {
        for (String each : Lines.wrap(face, size, room, text)) {
            need(line);
            y += line;
            page.text(face, size, ink, x, y - line * 0.27f, each);
        }
    }

    /** As many lines as the text needs, from the base line on; answers the base line after the last. */
    float lines(Typeface face, float size, float line, Ink ink, float x, float base, List<String> wrapped) {
        float at = base;
        for (String each : wrapped) {
            page.text(face, size, ink, x, at, each);
            at += line;
        }
        return at;
    }

    byte[] bytes(Locale language, String title, @Nullable String footRight) {
        return bytesWith(language, title, any -> footRight);
    }

    /** @param foot what stands at the right of each page's foot, in the page's own words */
    byte[] bytesWith(Locale language, String title, Function<Words, @Nullable String> foot) {
        int of = file.pages().size();
        for (int number = 1; number <= of; number++) {
            Canvas each = file.pages().get(number - 1);
            float base = FOOT_RULE + 13;
            Words its = spoken.get(number - 1);
            String footRight = foot.apply(its);
            each.line(Ink.INK, 0.75f, LEFT, FOOT_RULE, RIGHT, FOOT_RULE);
            String count = its.say("page", "paper", paper)
                    .replace("{number}", String.valueOf(number))
                    .replace("{of}", String.valueOf(of));
            float room = footRight == null ? WIDTH : WIDTH * 0.45f;
            String counted = Letters.plain(count);
            each.text(
                    Typeface.REGULAR,
                    Canvas.fitting(Typeface.REGULAR, Type.SMALL, room, counted),
                    Ink.QUIET,
                    LEFT,
                    base,
                    counted);
            if (footRight != null) {
                each.textRight(Typeface.REGULAR, Type.SMALL, Ink.QUIET, RIGHT, base, WIDTH * 0.53f, footRight);
            }
        }
        return file.bytes(language, title, sender);
    }

    /** The text, ended by an ellipsis where it is too wide. */
    static String clip(String text, Typeface face, float size, float room) {
        String plain = Letters.plain(text);
        if (face.width(plain, size) <= room) {
            return plain;
        }
        int end = plain.length();
        while (end > 1 && face.width(plain.substring(0, end), size) + face.width('\u2026') * size / 1000 > room) {
            end--;
        }
        return plain.substring(0, end).stripTrailing() + "\u2026";
    }
}
