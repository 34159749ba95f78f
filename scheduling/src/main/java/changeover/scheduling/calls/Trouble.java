package changeover.scheduling.calls;

import changeover.contracts.words.Wording;
import java.util.Locale;

/** What is wrong, in the few words that a trade sorts calls by; the caller's own words stand beside it. */
public enum Trouble {
    NO_HEAT("No heat", "Pas de chauffage"),
    NO_COOLING("No cooling", "Pas de climatisation"),
    WATER("Water", "De l’eau"),
    NOISE("Noise", "Un bruit"),
    SMELL("Smell", "Une odeur"),
    ALARM("Alarm", "Une alarme"),
    THERMOSTAT("Thermostat", "Le thermostat"),
    OTHER("Something else", "Autre chose");

    private final Wording wording;

    Trouble(String en, String fr) {
        wording = new Wording(en, fr);
    }

    public Wording wording() {
        return wording;
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Trouble ofCode(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }
}
