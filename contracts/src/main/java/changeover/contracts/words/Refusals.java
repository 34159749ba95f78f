package changeover.contracts.words;

import changeover.contracts.money.Money;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;

/**
 * The sentences of refusals. Every module keeps its own in {@code changeover/refusals_en.properties} and
 * {@code changeover/refusals_fr.properties} (UTF-8); a sentence has {@code {name}} places for the refusal's facts.
 */
public final class Refusals {

    private static final Map<String, String> ENGLISH = load("en");
    private static final Map<String, String> FRENCH = load("fr");

    private Refusals() {}

    /**
     * The sentence in the person's language.
     *
     * @throws IllegalArgumentException when no sentence has that code: a bug, not a refusal
     */
    public static String sentence(Refusal refusal, Locale locale) {
        String pattern = ("fr".equals(locale.getLanguage()) ? FRENCH : ENGLISH).get(refusal.code());
        if (pattern == null) {
            throw new IllegalArgumentException("no sentence for the refusal " + refusal.code());
        }
        for (Map.Entry<String, ?> fact : refusal.facts().entrySet()) {
            pattern = pattern.replace("{" + fact.getKey() + "}", said(fact.getValue(), locale));
        }
        return pattern;
    }

    public static boolean knows(String code) {
        return ENGLISH.containsKey(code) && FRENCH.containsKey(code);
    }

    /** Every sentence of one language, by code: for the test that both languages say the same things. */
    public static Map<String, String> all(Locale locale) {
        return "fr".equals(locale.getLanguage()) ? FRENCH : ENGLISH;
    }

    private static String said(Object fact, Locale locale) {
        return switch (fact) {
            case Wording wording -> wording.in(locale);
            case Money money -> money.format(locale);
            case BigDecimal number
            when "fr".equals(locale.getLanguage()) -> number.toPlainString().replace('.', ',');
            case BigDecimal number -> number.toPlainString();
            default -> String.valueOf(fact);
        };
    }

    private static Map<String, String> load(String language) {
        Map<String, String> sentences = new HashMap<>();
        try {
            ClassLoader loader = Thread.currentThread().getContextClassLoader();
            String path = "changeover/refusals_" + language + ".properties";
            for (URL url : Collections.list(loader.getResources(path))) {
                Properties some = new Properties();
                try (var in = new InputStreamReader(url.openStream(), StandardCharsets.UTF_8)) {
                    some.load(in);
                }
                some.forEach((code, sentence) -> sentences.put((String) code, (String) sentence));
            }
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
        return Map.copyOf(sentences);
    }
}
