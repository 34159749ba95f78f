package changeover.contracts.tenants;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A licence card that a person holds: refrigerant, gas or house wiring, with its number and its last day. */
@Entity
@Table(name = "ticket")
public class Ticket extends Owned {

    @Column(name = "person_id", updatable = false)
    private UUID personId = new UUID(0, 0);

    private String kind = "";
    private @Nullable String number;

    @Column(name = "expires_on")
    private @Nullable LocalDate expiresOn;

    /** @param kind refrigerant, gas or electrical */
    public static Ticket of(UUID personId, String kind, @Nullable String number, @Nullable LocalDate expiresOn) {
        var ticket = new Ticket();
        ticket.personId = personId;
        ticket.kind = kind;
        ticket.number = number;
        ticket.expiresOn = expiresOn;
        return ticket;
    }

    public boolean holdsOn(LocalDate day) {
        return expiresOn == null || !day.isAfter(expiresOn);
    }

    public UUID personId() {
        return personId;
    }

    public String kind() {
        return kind;
    }

    public Optional<String> number() {
        return Optional.ofNullable(number);
    }

    public Optional<LocalDate> expiresOn() {
        return Optional.ofNullable(expiresOn);
    }
}
