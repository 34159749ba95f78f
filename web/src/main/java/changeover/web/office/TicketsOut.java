package changeover.web.office;

import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Ticket;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** The tickets that hold no more or run out within sixty days, so that somebody sees to them in time. */
@ApplicationScoped
class TicketsOut {

    public record Row(UUID person, String name, String kind, String last, boolean over) {}

    @Inject
    People people;

    List<Row> rows(Frame frame) {
        List<Ticket> out = people.ticketsRunningOut(frame.today());
        if (out.isEmpty()) {
            return List.of();
        }
        Map<UUID, String> names =
                people.all().stream().collect(Collectors.toMap(Membership::personId, Membership::name));
        return out.stream()
                .map(ticket -> new Row(
                        ticket.personId(),
                        names.getOrDefault(ticket.personId(), ""),
                        ticket.kind(),
                        ticket.expiresOn().map(frame::brief).orElse(""),
                        !ticket.holdsOn(frame.today())))
                .toList();
    }
}
