package changeover.contracts.agreements;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** Homes of the current business that were sold or let to somebody else, and the agreements that followed. */
@ApplicationScoped
public class HomesHandedOver {

    /** A home that changed hands. */
    public record Past(UUID id, String kind, UUID customerId, String customer, LocalDate day) {}

    @Inject
    EntityManager rows;

    @Inject
    HomeParts parts;

    @Inject
    Customers customers;

    @Inject
    Agreements agreements;

    @Inject
    Event<AgreementTakenOver> takenOver;

    /** The agreement of a home that has not run out on that day, nor ended before it. */
    public Optional<Agreement> agreement(UUID homeId, LocalDate day) {
        return agreements.of(homeId).stream()
                .filter(one -> agreements.acceptance(one.id()).isPresent()
                        && agreements.ending(one.id()).isEmpty()
                        && day.isBefore(one.term().until()))
                .min(Comparator.comparing(one -> one.term().from()));
    }

    /**
     * It changes hands on the day. Refused where the new one has the home already, or where an agreement should follow and
     * none runs then.
     *
     * @return the agreement that followed
     */
    public Optional<Agreement> handOver(Handover handover) {
        Customer customer = customers
                .get(handover.customerId())
                .orElseThrow(() -> Refusal.of("handover.nobody").at("known").thrown());
        boolean theirs = parts.on(handover.homeId(), handover.day()).stream()
                .filter(part -> handover.kind().passes().contains(part.part()))
                .anyMatch(part -> part.customerId().equals(customer.id()));
        if (theirs) {
            throw Refusal.of("handover.theirs-already").at("known").thrown();
        }
        Optional<Agreement> running = agreement(handover.homeId(), handover.day());
        if (handover.follows() && handover.kind() == Handover.Kind.SOLD && running.isEmpty()) {
            throw Refusal.of("handover.no-agreement", Map.of("day", DayInWords.of(handover.day())))
                    .at("agreement")
                    .thrown();
        }
        parts.pass(handover.homeId(), customer.id(), handover.kind().passes(), handover.day());
        rows.createNativeQuery("insert into home_handover (home_id, kind, customer_id, day)"
                        + " values (:home, :kind, :customer, :day)")
                .setParameter("home", handover.homeId())
                .setParameter("kind", handover.kind().code())
                .setParameter("customer", customer.id())
                .setParameter("day", handover.day())
                .executeUpdate();
        if (!handover.follows() || handover.kind() == Handover.Kind.LET) {
            return Optional.empty();
        }
        running.ifPresent(agreement -> takeOver(agreement, customer, handover.day()));
        return running;
    }

    private void takeOver(Agreement agreement, Customer customer, LocalDate day) {
        UUID wasPayer = agreement.payerId();
        rows.createNativeQuery(
                        "insert into agreement_takeover (agreement_id, day, was_signer_id, was_payer_id, customer_id)"
                                + " values (:agreement, :day, :signer, :payer, :customer)")
                .setParameter("agreement", agreement.id())
                .setParameter("day", day)
                .setParameter("signer", agreement.signerId())
                .setParameter("payer", wasPayer)
                .setParameter("customer", customer.id())
                .executeUpdate();
        rows.createQuery(
                        "update versioned Agreement set signerId = :customer, payerId = :customer where id = :agreement")
                .setParameter("customer", customer.id())
                .setParameter("agreement", agreement.id())
                .executeUpdate();
        rows.refresh(agreement);
        takenOver.fire(new AgreementTakenOver(
                agreement.id(), agreement.homeId(), day, wasPayer, customer.id(), customer.language()));
    }

    /** Every time that the home changed hands, the latest first. */
    @SuppressWarnings("unchecked")
    public List<Past> of(UUID homeId) {
        List<Tuple> found = rows.createNativeQuery("""
                        select h.id, h.kind, h.customer_id, c.name, h.day from home_handover h
                          join customer c on c.tenant_id = h.tenant_id and c.id = h.customer_id
                         where h.home_id = :home order by h.day desc, h.id desc""", Tuple.class)
                .setParameter("home", homeId)
                .getResultList();
        return found.stream()
                .map(row -> new Past(
                        row.get("id", UUID.class),
                        row.get("kind", String.class),
                        row.get("customer_id", UUID.class),
                        row.get("name", String.class),
                        row.get("day", LocalDate.class)))
                .toList();
    }
}
