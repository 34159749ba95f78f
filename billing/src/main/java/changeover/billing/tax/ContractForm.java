package changeover.billing.tax;

import changeover.contracts.words.Wording;
import java.util.Locale;

/** How the price was agreed: a plan for a term, parts and labour stated apart, or one sum for everything. */
public enum ContractForm {
    PLAN(new Wording("a plan for a term", "une formule pour un terme")),
    SEPARATE(new Wording("parts and labour apart", "pièces et main-d’œuvre à part")),
    LUMP_SUM(new Wording("one sum for everything", "une somme pour le tout"));

    private final Wording wording;

    ContractForm(Wording wording) {
        this.wording = wording;
    }

    public static ContractForm of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public Wording wording() {
        return wording;
    }
}
