package changeover.scheduling.dayplan.change;

import changeover.contracts.words.Wording;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Why a whole day falls away: a few words that customers can be told in their own language. */
public enum DayCause {
    STORM("storm", "tempête"),
    ROADS("state of the roads", "état des routes"),
    POWER("power cut", "panne de courant"),
    BREAKDOWN("breakdown of ours", "panne chez nous"),
    CREW("illness in the crew", "maladie dans l’équipe");

    private final Wording words;

    DayCause(String en, String fr) {
        words = new Wording(en, fr);
    }

    public Wording words() {
        return words;
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static DayCause ofCode(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    public static Set<String> codes() {
        return Stream.of(values()).map(DayCause::code).collect(Collectors.toUnmodifiableSet());
    }
}
