package changeover.billing.documents;

import java.util.ArrayList;
import java.util.List;

/** A text broken into lines that fit; a word wider than the line is cut where it must be. */
final class Lines {

    private Lines() {}

    /** At least one line; a line feed in the text begins a new one. */
    static List<String> wrap(Typeface face, float size, float room, String text) {
        List<String> lines = new ArrayList<>(4);
        if (text.indexOf('\n') < 0) {
            wrapParagraph(face, size, room, Letters.plain(text), lines);
        } else {
            for (String paragraph : text.split("\\R", -1)) {
                wrapParagraph(face, size, room, Letters.plain(paragraph), lines);
            }
        }
        return lines;
    }

    private static void wrapParagraph(Typeface face, float size, float room, String text, List<String> lines) {
        int budget = (int) (room * 1000 / size);
        int start = 0;
        int lastSpace = -1;
        int width = 0;
        int at = 0;
        while (at < text.length()) {
            char letter = text.charAt(at);
            int letterWidth = face.width(letter);
            if (letter == ' ') {
                lastSpace = at;
            }
            if (width + letterWidth > budget && at > start && letter != ' ') {
                int end = lastSpace > start ? lastSpace : at;
                lines.add(text.substring(start, end).stripTrailing());
                start = lastSpace > start ? lastSpace + 1 : at;
                lastSpace = -1;
                at = start;
                width = 0;
            } else {
                width += letterWidth;
                at++;
            }
        }
        if (start < text.length() || lines.isEmpty() || text.isEmpty()) {
            lines.add(text.substring(start).stripTrailing());
        }
    }
}
