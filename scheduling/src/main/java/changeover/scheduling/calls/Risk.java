package changeover.scheduling.calls;

import changeover.contracts.words.Wording;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Who or what is at risk while somebody is on the telephone. */
public enum Risk {
    ALARM("A carbon monoxide, gas or smoke alarm sounds", "Une alarme de monoxyde, de gaz ou de fumée sonne"),
    GAS("It smells of gas", "Ça sent le gaz"),
    SYMPTOMS("Somebody has a headache, nausea, dizziness", "Quelqu’un a mal à la tête, des nausées, des vertiges"),
    WATER("Water is running or near electricity", "De l’eau coule ou touche à l’électricité"),
    AGE("Somebody old or ill lives there", "Une personne âgée ou malade y habite"),
    INFANT("An infant lives there", "Un nourrisson y habite");

    private final Wording wording;

    Risk(String en, String fr) {
        wording = new Wording(en, fr);
    }

    public Wording wording() {
        return wording;
    }

    /** Whether everybody leaves and the emergency service comes before us. */
    public boolean isLife() {
        return this == ALARM || this == GAS || this == SYMPTOMS;
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Risk ofCode(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    /** Every code, in the order in which they are asked. */
    public static List<String> codes() {
        return Arrays.stream(values()).map(Risk::code).toList();
    }

    /** Alarm as the trouble is an alarm as a risk, whether or not somebody ticked it. */
    static Set<Risk> of(Trouble trouble, Set<Risk> said) {
        return Arrays.stream(values())
                .filter(risk -> said.contains(risk) || risk == ALARM && trouble == Trouble.ALARM)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
