package changeover.contracts.words;

import java.util.regex.Pattern;

/**
 * A text that a spreadsheet would run as a formula goes out with one apostrophe in front, which coming in takes off
 * again; a text that already has apostrophes before such a sign gets one more, so that nothing is ever lost.
 */
public final class FormulaGuard {

    private static final Pattern OUT = Pattern.compile("'*[=+\\-@\\t\\r].*", Pattern.DOTALL);
    private static final Pattern IN = Pattern.compile("'+[=+\\-@\\t\\r].*", Pattern.DOTALL);

    private FormulaGuard() {}

    public static String out(String text) {
        return OUT.matcher(text).matches() ? "'" + text : text;
    }

    public static String in(String text) {
        return IN.matcher(text).matches() ? text.substring(1) : text;
    }
}
