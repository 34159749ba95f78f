package changeover.web.office;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;

/** What a kind of record, its columns and their fixed words are called in a language: {@code changeover/changes_….properties}. */
final class ChangeNames {

    private static final ChangeNames ENGLISH = new ChangeNames(load("en"));
    private static final ChangeNames FRENCH = new ChangeNames(load("fr"));

    private final Map<String, String> words;

    private ChangeNames(Map<String, String> words) {
        this.words = words;
    }

    static ChangeNames of(Locale locale) {
        return locale.getLanguage().equals("fr") ? FRENCH : ENGLISH;
    }

    Map<String, String> all() {
        return words;
    }

    String word(String key) {
        return words.getOrDefault(key, key);
    }

    /** The column in words; empty when nobody has said what it is called. */
    Optional<String> field(String table, String field) {
        return first(table + "." + field, field);
    }

    /** The word for a code that a column holds; empty for whatever is no code. */
    Optional<String> code(String table, String field, String value) {
        return first(table + "." + field + "." + value, field + "." + value);
    }

    private Optional<String> first(String narrow, String wide) {
        return Optional.ofNullable(words.getOrDefault(narrow, words.get(wide)));
    }

    private static Map<String, String> load(String language) {
        var words = new HashMap<String, String>();
        var read = new Properties();
        try (var bytes = ChangeNames.class.getResourceAsStream("/changeover/changes_" + language + ".properties")) {
            if (bytes == null) {
                throw new IllegalStateException("no words for what was changed in " + language);
            }
            read.load(new InputStreamReader(bytes, StandardCharsets.UTF_8));
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
        read.forEach((key, word) -> words.put((String) key, (String) word));
        return Map.copyOf(words);
    }
}
