package changeover.contracts.catalogue;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Optional;

/** The licence card a task asks for: none, or one that the technician must hold on the day. */
public enum TicketNeeded {
    @JsonProperty("none")
    NONE("none"),
    @JsonProperty("refrigerant")
    REFRIGERANT("refrigerant"),
    @JsonProperty("gas")
    GAS("gas"),
    @JsonProperty("electrical")
    ELECTRICAL("electrical");

    private final String code;

    TicketNeeded(String code) {
        this.code = code;
    }

    public String code() {
        return code;
    }

    /** The kind of ticket as a person's own tickets name it; empty for {@link #NONE}. */
    public Optional<String> kind() {
        return this == NONE ? Optional.empty() : Optional.of(code);
    }

    public static TicketNeeded ofCode(String code) {
        for (TicketNeeded ticket : values()) {
            if (ticket.code.equals(code)) {
                return ticket;
            }
        }
        throw new IllegalArgumentException("ticket: " + code);
    }
}
