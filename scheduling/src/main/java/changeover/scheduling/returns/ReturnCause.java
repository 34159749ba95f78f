package changeover.scheduling.returns;

import changeover.contracts.words.Wording;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Why we came back without charge. */
public enum ReturnCause {
    WORKMANSHIP("how the work was done", "la façon dont le travail a été fait"),
    PART("a part that failed", "une pièce qui a lâché"),
    DIAGNOSIS("the trouble was not found the first time", "le défaut n’avait pas été trouvé la première fois"),
    UNFINISHED("the work was not finished", "le travail n’était pas terminé"),
    SETTING("a setting", "un réglage"),
    OTHER("something else", "autre chose");

    private final Wording wording;

    ReturnCause(String en, String fr) {
        wording = new Wording(en, fr);
    }

    public Wording wording() {
        return wording;
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static ReturnCause of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    public static Set<String> codes() {
        return Arrays.stream(values()).map(ReturnCause::code).collect(Collectors.toUnmodifiableSet());
    }
}
