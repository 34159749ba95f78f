package changeover.billing.documents;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;

/** The printed words of one language; both languages hold the same keys. */
public final class Words {

    private static final Words ENGLISH = new Words(Locale.CANADA);
    private static final Words FRENCH = new Words(Locale.CANADA_FRENCH);

    private final Locale language;
    private final Map<String, String> words;

    private Words(Locale language) {
        this.language = language;
        this.words = load(language.getLanguage());
    }

    /** French for any French locale, English for all others. */
    public static Words in(Locale locale) {
        return "fr".equals(locale.getLanguage()) ? FRENCH : ENGLISH;
    }

    public Locale language() {
        return language;
    }

    boolean isFrench() {
        return this == FRENCH;
    }

    boolean knows(String key) {
        return words.containsKey(key);
    }

    Map<String, String> all() {
        return words;
    }

    /** @throws IllegalArgumentException for a key without words */
    public String say(String key) {
        String said = words.get(key);
        if (said == null) {
            throw new IllegalArgumentException("no words for " + key);
        }
        return said;
    }

    /** A unit by its UN/ECE code as it is printed; nothing for what is simply counted, the code for one without words. */
    public String unit(String code) {
        return words.getOrDefault("unit." + code, code);
    }

    public String say(String key, String name, Object value) {
        return say(key).replace("{" + name + "}", String.valueOf(value));
    }

    public String say(String key, Map<String, ?> values) {
        String said = say(key);
        for (Map.Entry<String, ?> value : values.entrySet()) {
            said = said.replace("{" + value.getKey() + "}", String.valueOf(value.getValue()));
        }
        return said;
    }

    private static Map<String, String> load(String language) {
        String file = "words_" + language + ".properties";
        try (InputStream bytes = Words.class.getResourceAsStream(file)) {
            if (bytes == null) {
                throw new IllegalStateException("no file " + file);
            }
            Properties read = new Properties();
            read.load(new InputStreamReader(bytes, StandardCharsets.UTF_8));
            Map<String, String> words = new HashMap<>();
            read.forEach((key, text) -> words.put((String) key, (String) text));
            return Map.copyOf(words);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
