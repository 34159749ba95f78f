package changeover.contracts.catalogue;

import changeover.contracts.words.Wording;
import com.fasterxml.jackson.annotation.JsonProperty;

/** How much a finding matters, from what is good to know to what must stay off until it is put right. */
public enum FindingLevel {
    @JsonProperty("information")
    INFORMATION("information", new Wording("For your information", "À savoir")),
    @JsonProperty("recommended")
    RECOMMENDED("recommended", new Wording("Recommended", "Recommandé")),
    @JsonProperty("urgent")
    URGENT("urgent", new Wording("Urgent", "Urgent")),
    @JsonProperty("do_not_use")
    DO_NOT_USE("do_not_use", new Wording("Do not use", "Ne pas utiliser"));

    private final String code;
    private final Wording wording;

    FindingLevel(String code, Wording wording) {
        this.code = code;
        this.wording = wording;
    }

    public String code() {
        return code;
    }

    public Wording wording() {
        return wording;
    }

    public static FindingLevel ofCode(String code) {
        for (FindingLevel level : values()) {
            if (level.code.equals(code)) {
                return level;
            }
        }
        throw new IllegalArgumentException("level: " + code);
    }
}
