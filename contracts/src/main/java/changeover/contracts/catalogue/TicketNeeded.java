package changeover.contracts.catalogue;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

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

    /** The kinds of ticket that a person may hold, by code. */
    public static final Set<String> KINDS =
            Arrays.stream(values()).flatMap(ticket -> ticket.kind().stream()).collect(Collectors.toUnmodifiableSet());

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
