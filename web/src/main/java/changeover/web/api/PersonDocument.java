package changeover.web.api;

import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.Ticket;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Somebody who works here, as the API says it.
 *
 * @param id the person: the subject of their sign-in
 * @param role owner, office or technician
 * @param asked the day on which somebody with a sign-in of their own was asked; null for the others
 * @param joined the day of their yes
 * @param declined the day of their no; the owner may ask again
 * @param waiting whether their yes is still waited for: until then nothing here is open to them
 */
public record PersonDocument(
        UUID id,
        String name,
        String email,
        @Nullable String phone,
        String language,
        String role,
        @Nullable LocalDate asked,
        @Nullable LocalDate joined,
        @Nullable LocalDate declined,
        boolean waiting,
        @Nullable LocalDate lastDay,
        List<TicketDocument> tickets,
        int version) {

    /** @param kind refrigerant, gas or electrical */
    public record TicketDocument(
            String kind, @Nullable String number, @Nullable LocalDate expires) {}

    static PersonDocument of(Membership member, List<Ticket> tickets) {
        return new PersonDocument(
                member.personId(),
                member.name(),
                member.email(),
                member.phone().orElse(null),
                member.language(),
                member.role().code(),
                member.askedOn().orElse(null),
                member.joinedOn().orElse(null),
                member.declinedOn().orElse(null),
                member.isAsked() && member.declinedOn().isEmpty(),
                member.untilDay().orElse(null),
                tickets.stream()
                        .map(ticket -> new TicketDocument(
                                ticket.kind(),
                                ticket.number().orElse(null),
                                ticket.expiresOn().orElse(null)))
                        .toList(),
                member.version());
    }
}
