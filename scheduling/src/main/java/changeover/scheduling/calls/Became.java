package changeover.scheduling.calls;

import changeover.contracts.words.Wording;
import java.util.Locale;

/** What a call became. */
public enum Became {
    VISIT("A visit", "Une visite"),
    ADVICE("A word of advice", "Un conseil"),
    NOTHING("Nothing", "Rien");

    private final Wording wording;

    Became(String en, String fr) {
        wording = new Wording(en, fr);
    }

    public Wording wording() {
        return wording;
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Became ofCode(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }
}
