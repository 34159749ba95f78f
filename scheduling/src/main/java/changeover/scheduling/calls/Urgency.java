package changeover.scheduling.calls;

import changeover.contracts.words.Wording;
import java.util.Locale;
import java.util.Set;

/**
 * Life comes before everything; running water, and no heat where somebody is frail, before what is only cold; a smell is
 * looked at as if it were urgent until it is known what it is.
 */
public enum Urgency {
    LIFE("Life at risk", "Vie en danger"),
    URGENT("Urgent", "Urgent"),
    SOON("Soon", "Bientôt"),
    ORDINARY("Ordinary", "Ordinaire");

    private final Wording wording;

    Urgency(String en, String fr) {
        wording = new Wording(en, fr);
    }

    public static Urgency of(Trouble trouble, Heat heat, Set<Risk> risks) {
        boolean cold = heat == Heat.NO || trouble == Trouble.NO_HEAT && heat != Heat.YES;
        boolean frail = risks.contains(Risk.AGE) || risks.contains(Risk.INFANT);
        if (trouble == Trouble.ALARM || risks.stream().anyMatch(Risk::isLife)) {
            return LIFE;
        }
        if (risks.contains(Risk.WATER) || trouble == Trouble.SMELL || cold && frail) {
            return URGENT;
        }
        return cold || frail || trouble == Trouble.WATER ? SOON : ORDINARY;
    }

    public Wording wording() {
        return wording;
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Urgency ofCode(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }
}
