package changeover.contracts.words;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Words as people compare them: capitals, accents, marks and double blanks make no difference. */
public final class Folded {

    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}]+");

    private Folded() {}

    /** {@code "12, Rue des Érables"} is {@code "12 rue des erables"}; nothing is an empty text. */
    public static String of(@Nullable String text) {
        if (text == null) {
            return "";
        }
        String plain = ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD))
                .replaceAll("")
                .toLowerCase(Locale.ROOT)
                .replace("œ", "oe")
                .replace("æ", "ae");
        return BETWEEN_WORDS.matcher(plain).replaceAll(" ").strip();
    }
}
