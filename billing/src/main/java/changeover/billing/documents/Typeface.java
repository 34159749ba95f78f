package changeover.billing.documents;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.BitSet;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.openpdf.text.pdf.BaseFont;

/** The three faces of every paper, read once; a document carries only the letters of its kind, cut once for all alike. */
enum Typeface {
    REGULAR("Archivo-Regular"),
    BOLD("Archivo-SemiBold"),
    HEADING("Besley-SemiBold");

    private static final int CUTS_KEPT = 400;
    private static final BitSet PLAIN = plain();
    private static final BitSet FRENCH = of("àâäçéèêëîïôöùûüÿÀÂÇÉÈÊËÎÏÔÙÛÜŒœ«»’–·×°");

    private final String fontName;
    private final BaseFont font;
    private final short[] widths = new short[256];
    private final Map<BitSet, FontCut> cuts = new ConcurrentHashMap<>();

    Typeface(String fontName) {
        this.fontName = fontName;
        this.font = read(fontName);
    }

    String fontName() {
        return fontName;
    }

    BaseFont font() {
        return font;
    }

    /** The resource's name in a page: F0, F1, F2. */
    String resource() {
        return "F" + ordinal();
    }

    boolean holds(char letter) {
        return font.charExists(letter);
    }

    static boolean allHold(char letter) {
        for (Typeface face : values()) {
            if (letter != '\u00a0' && !face.holds(letter)) {
                return false;
            }
        }
        return true;
    }

    /** The text's width in points at the size; the text holds plain letters only. */
    float width(String text, float size) {
        int sum = 0;
        for (int at = 0; at < text.length(); at++) {
            sum += width(text.charAt(at));
        }
        return sum * size / 1000f;
    }

    /** A letter's width in thousandths of the size. */
    int width(char letter) {
        int code = Letters.code(letter);
        int width = widths[code];
        if (width == 0) {
            width = font.getWidth(letter == '\u00a0' ? ' ' : letter);
            widths[code] = (short) width;
        }
        return width;
    }

    /** The cut that holds at least the letters used (codes of Windows-1252). */
    FontCut cut(BitSet used) {
        BitSet wanted = (BitSet) used.clone();
        if (this == HEADING) {
            wanted.or(of("0123456789 .,$-"));
        } else {
            wanted.or(PLAIN);
            if (used.intersects(FRENCH)) {
                wanted.or(FRENCH);
            }
        }
        FontCut cut = cuts.get(wanted);
        if (cut == null) {
            if (cuts.size() >= CUTS_KEPT) {
                cuts.clear();
            }
            cut = FontCut.of(this, wanted);
            cuts.put(wanted, cut);
        }
        return cut;
    }

    /** What nearly every paper prints; a rarer mark is added where it is used. */
    private static BitSet plain() {
        BitSet plain = of(" \u00a0.,:;'()/@&%$-");
        plain.set('0', '9' + 1);
        plain.set('A', 'Z' + 1);
        plain.set('a', 'z' + 1);
        return plain;
    }

    private static BitSet of(String letters) {
        BitSet set = new BitSet(256);
        letters.chars().forEach(letter -> set.set(WindowsCode.of((char) letter)));
        return set;
    }

    private static BaseFont read(String fontName) {
        String file = "fonts/" + fontName + ".ttf";
        try (InputStream bytes = Typeface.class.getResourceAsStream(file)) {
            if (bytes == null) {
                throw new IllegalStateException("No font " + file);
            }
            return BaseFont.createFont(
                    fontName + ".ttf", BaseFont.WINANSI, BaseFont.EMBEDDED, true, bytes.readAllBytes(), null);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
