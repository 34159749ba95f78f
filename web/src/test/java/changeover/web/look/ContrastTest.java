package changeover.web.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Words stand out 4.5 to 1 and marks 3 to 1 from what they stand on, by day and by night, by the formula of WCAG 2.2. */
class ContrastTest {

    private static final Path CSS = Path.of("src/main/resources/META-INF/resources/css");
    private static final List<String> WORDS_ON_GROUNDS = List.of(
            "ink on sheet",
            "ink on desk",
            "ink on field",
            "quiet on sheet",
            "quiet on desk",
            "quiet on field",
            "stamp on sheet",
            "red on sheet",
            "red on field",
            "red on urgent",
            "ink on urgent",
            "sheet on ink",
            "tag-ink on tag",
            "tag-quiet on tag",
            "ink on cool-tint",
            "ink on heat-tint",
            "red on heat-tint",
            "red on cool-tint",
            "quiet on cool-tint",
            "quiet on heat-tint");
    private static final List<String> MARKS_ON_GROUNDS = List.of(
            "line on sheet",
            "line on field",
            "line on desk",
            "cool on cool-tint",
            "heat on heat-tint",
            "stamp on desk",
            "tag-edge on sheet",
            "stamp on cool-tint",
            "stamp on heat-tint",
            "line on heat-tint");

    @Test
    void everyPairIsReadable() throws IOException {
        for (String sheet : List.of("changeover.css", "hand.css")) {
            Map<String, String[]> colours = colours(Files.readString(CSS.resolve(sheet)));
            for (int night = 0; night < 2; night++) {
                check(colours, night, WORDS_ON_GROUNDS, 4.5);
                check(colours, night, MARKS_ON_GROUNDS, 3);
            }
        }
    }

    @Test
    void bothSheetsAgreeOnEveryColour() throws IOException {
        Map<String, String[]> office = colours(Files.readString(CSS.resolve("changeover.css")));
        Map<String, String[]> hand = colours(Files.readString(CSS.resolve("hand.css")));
        assertEquals(office.keySet(), hand.keySet());
        office.forEach((name, pair) -> assertEquals(List.of(pair), List.of(hand.get(name)), name));
    }

    private static void check(Map<String, String[]> colours, int night, List<String> pairs, double least) {
        for (String pair : pairs) {
            String[] names = pair.split(" on ");
            double ratio = ratio(colours.get(names[0])[night], colours.get(names[1])[night]);
            assertTrue(ratio >= least, pair + (night == 1 ? " by night: " : " by day: ") + ratio);
        }
    }

    private static Map<String, String[]> colours(String css) {
        Map<String, String[]> colours = new HashMap<>();
        Matcher pair = Pattern.compile("--([a-z-]+): ?light-dark\\(#([0-9a-f]{3,6}), ?#([0-9a-f]{3,6})\\)")
                .matcher(css);
        while (pair.find()) {
            colours.put(pair.group(1), new String[] {pair.group(2), pair.group(3)});
        }
        return colours;
    }

    private static double ratio(String one, String other) {
        double lighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(String hex) {
        String six = hex.length() == 3 ? hex.replaceAll("(.)", "$1$1") : hex;
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double channel = Integer.parseInt(six.substring(2 * i, 2 * i + 2), 16) / 255.0;
            sum += weights[i] * (channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4));
        }
        return sum;
    }
}
