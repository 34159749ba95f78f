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

    /** How long before its last day a ticket is spoken of. */
    public static final int SPOKEN_OF_DAYS = 60;

    /** A new card of the same kind takes the old one's place. */
    void renew(@Nullable String newNumber, @Nullable LocalDate newLastDay) {
        number = newNumber;
        expiresOn = newLastDay;
    }

    /** Whether it is over on that day or soon after, so that somebody must see to it. */
    public boolean runsOut(LocalDate day) {
        return expiresOn != null && !expiresOn.isAfter(day.plusDays(SPOKEN_OF_DAYS));
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
