package changeover.billing.tax;

import changeover.contracts.words.Wording;
import java.util.Locale;

/** What is done for the money: upkeep on a schedule, mending what is broken, putting in something new, or none: a fee. */
public enum Work {
    MAINTENANCE(new Wording("maintenance", "entretien")),
    REPAIR(new Wording("repair", "réparation")),
    INSTALLATION(new Wording("installation", "installation")),
    FEE(new Wording("a fee, no work", "des frais, aucun travail"));

    private final Wording wording;

    Work(Wording wording) {
        this.wording = wording;
    }

    public static Work of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public Wording wording() {
        return wording;
    }
}
