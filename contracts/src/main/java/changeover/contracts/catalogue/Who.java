package changeover.contracts.catalogue;

import com.fasterxml.jackson.annotation.JsonProperty;

/** A task is the household's own or the technician's; only the technician's make visits. */
public enum Who {
    @JsonProperty("household")
    HOUSEHOLD("household"),
    @JsonProperty("technician")
    TECHNICIAN("technician");

    private final String code;

    Who(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    public static Who ofCode(String code) {
        for (Who who : values()) {
            if (who.code.equals(code)) {
                return who;
            }
        }
        throw new IllegalArgumentException("who: " + code);
    }
}
