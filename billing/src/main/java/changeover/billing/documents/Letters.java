package changeover.billing.documents;

import java.nio.charset.Charset;
import java.text.Normalizer;
import java.util.Map;

/**
 * Every name can be printed: a letter that the type does not hold is printed as its plain letter, a mark that has none
 * as a question mark, and what would hide or turn the text is left out.
 */
final class Letters {

    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final Map<Character, String> INSTEAD = Map.ofEntries(
            Map.entry('\u202f', "\u00a0"),
            Map.entry('\u2009', "\u00a0"),
            Map.entry('\u2007', "\u00a0"),
            Map.entry('\u2212', "\u2013"),
            Map.entry('\u2011', "-"),
            Map.entry('\u2010', "-"),
            Map.entry('\u2015', "\u2014"),
            Map.entry('\u02bc', "\u2019"),
            Map.entry('\u0141', "L"),
            Map.entry('\u0142', "l"),
            Map.entry('\u0110', "D"),
            Map.entry('\u0111', "d"),
            Map.entry('\u0131', "i"),
            Map.entry('\u2032', "'"),
            Map.entry('\u2033', "\""),
            Map.entry('\u2126', " ohm"),
            Map.entry('\u03a9', " ohm"),
            Map.entry('\u2264', "<="),
            Map.entry('\u2265', ">="),
            Map.entry('\u2192', "->"),
            Map.entry('\u03bc', "\u00b5"));
    private static final byte[] CODES = codes();

    private Letters() {}

    /** The text with only letters that the type holds; line ends and tabs are spaces. */
    static String plain(String text) {
        for (int at = 0; at < text.length(); at++) {
            if (code(text.charAt(at)) == 0) {
                return mended(text);
            }
        }
        return text;
    }

    /** The byte of Windows-1252 for a letter that the type holds, 0 for any other. */
    static int code(char letter) {
        return CODES[letter] & 0xff;
    }

    private static String mended(String text) {
        StringBuilder mended = new StringBuilder(text.length());
        String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
        int point;
        for (int at = 0; at < composed.length(); at += Character.charCount(point)) {
            point = composed.codePointAt(at);
            mended.append(letter(point));
        }
        return mended.toString();
    }

    private static String letter(int point) {
        if (point < 0x10000) {
            char letter = (char) point;
            if (code(letter) != 0) {
                return String.valueOf(letter);
            }
            String instead = INSTEAD.get(letter);
            if (instead != null) {
                return instead;
            }
        }
        if (point == '\n' || point == '\r' || point == '\t') {
            return " ";
        }
        return switch (Character.getType(point)) {
            case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.NON_SPACING_MARK -> "";
            case Character.SPACE_SEPARATOR, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> " ";
            default -> bare(point);
        };
    }

    private static String bare(int point) {
        String apart = Normalizer.normalize(Character.toString(point), Normalizer.Form.NFKD);
        StringBuilder bare = new StringBuilder();
        for (int at = 0; at < apart.length(); at++) {
            if (code(apart.charAt(at)) != 0) {
                bare.append(apart.charAt(at));
            }
        }
        return bare.isEmpty() ? "?" : bare.toString();
    }

    private static byte[] codes() {
        byte[] codes = new byte[0x10000];
        for (int code = 0x20; code < 0x100; code++) {
            String letter = new String(new byte[] {(byte) code}, WINDOWS);
            char first = letter.charAt(0);
            boolean control = Character.isISOControl(first) || first == '\ufffd' || first == '\u00ad';
            if (!control && Typeface.allHold(first)) {
                codes[first] = (byte) code;
            }
        }
        return codes;
    }
}
