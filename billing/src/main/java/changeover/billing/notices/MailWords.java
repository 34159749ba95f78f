package changeover.billing.notices;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Properties;

/** The subjects and bodies of messages, in both languages; {@code {name}} places are filled in. */
final class MailWords {

    private static final Map<String, String> ENGLISH = load("en");
    private static final Map<String, String> FRENCH = load("fr");

    private MailWords() {}

    /** @throws IllegalArgumentException for a key without words */
    static String say(String language, String key, Map<String, ?> values) {
        String said = (language.startsWith("fr") ? FRENCH : ENGLISH).get(key);
        if (said == null) {
            throw new IllegalArgumentException("no words for " + key);
        }
        for (Map.Entry<String, ?> value : values.entrySet()) {
            said = said.replace("{" + value.getKey() + "}", String.valueOf(value.getValue()));
        }
        return said;
    }

    static Map<String, String> all(String language) {
        return language.startsWith("fr") ? FRENCH : ENGLISH;
    }

    private static Map<String, String> load(String language) {
        String file = "mail_" + language + ".properties";
        try (InputStream bytes = MailWords.class.getResourceAsStream(file)) {
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
