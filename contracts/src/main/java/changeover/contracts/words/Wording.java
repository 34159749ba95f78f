package changeover.contracts.words;

import java.util.Locale;
import java.util.Objects;

/** A text held in English and in the French of Quebec; neither may be missing. */
public record Wording(String en, String fr) {

    public Wording {
        Objects.requireNonNull(en, "en");
        Objects.requireNonNull(fr, "fr");
    }

    /** The text in the reader's language: French for any French locale, English for all others. */
    public String in(Locale locale) {
        return "fr".equals(locale.getLanguage()) ? fr : en;
    }

    public String in(String language) {
        return language.startsWith("fr") ? fr : en;
    }
}
