package changeover.contracts.catalogue;

import changeover.contracts.words.Wording;

/** Where a reading stands against what is expected of it. */
public enum Standing {
    BELOW("below", new Wording("below what is expected", "sous la valeur attendue")),
    WITHIN("within", new Wording("as expected", "comme attendu")),
    ABOVE("above", new Wording("above what is expected", "au-dessus de la valeur attendue")),
    NOT_JUDGED("not_judged", new Wording("kept to compare", "notée pour comparer"));

    private final String code;
    private final Wording wording;

    Standing(String code, Wording wording) {
        this.code = code;
        this.wording = wording;
    }

    public String code() {
        return code;
    }

    public Wording wording() {
        return wording;
    }
}
