package changeover.scheduling.closeout;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Ticket;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.instruments.Instruments;
import changeover.scheduling.partners.GivenVisit;
import changeover.scheduling.partners.GivenVisits;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.Stock;
import changeover.scheduling.stock.StockPlace;
import changeover.scheduling.stock.StockPlaces;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The shop around a visit, asked only for what its operations need. */
@ApplicationScoped
class ShopAround {

    @Inject
    Parts parts;

    @Inject
    Stock stock;

    @Inject
    StockPlaces places;

    @Inject
    People people;

    @Inject
    OwnCatalogue own;

    @Inject
    AllEquipment equipment;

    @Inject
    Instruments instruments;

    @Inject
    GivenVisits given;

    @Inject
    Today today;

    /**
     * @param by who writes; where the visit has a technician, it is their van, and both their tickets count; where a partner has it,
     *     the licence of their trade does
     */
    Surroundings of(VisitAtHand visit, UUID by) {
        UUID technician = visit.technician() == null ? by : visit.technician();
        return new Surroundings() {

            private @Nullable Catalogue catalogue;
            private @Nullable Set<String> tickets;

            @Override
            public boolean knowsPart(String partCode) {
                return parts.find(partCode).isPresent();
            }

            @Override
            public boolean knowsSentence(String sentenceCode) {
                if (catalogue == null) {
                    catalogue = own.catalogue();
                }
                return catalogue.findSentence(sentenceCode).isPresent();
            }

            @Override
            public Optional<UUID> place(@Nullable UUID named) {
                return (named == null ? places.van(technician).or(() -> places.van(by)) : places.find(named))
                        .map(StockPlace::id);
            }

            @Override
            public BigDecimal onHand(UUID place, String partCode) {
                return stock.onHand(place, partCode);
            }

            @Override
            public Set<String> tickets() {
                if (tickets == null) {
                    tickets = new HashSet<>(held(technician));
                    tickets.addAll(held(by));
                    given.of(visit.id()).flatMap(GivenVisit::ticket).ifPresent(tickets::add);
                }
                return tickets;
            }

            @Override
            public List<Refusal> aboutMachine(Equipment.Facts facts) {
                return equipment.refusals(facts);
            }

            @Override
            public boolean knowsInstrument(UUID id) {
                return instruments.everKnown(id);
            }

            @Override
            public boolean knowsMachine(UUID id) {
                return equipment.get(id).isPresent();
            }
        };
    }

    private Set<String> held(UUID person) {
        Set<String> kinds = new HashSet<>();
        for (Ticket ticket : people.ticketsOf(person)) {
            if (ticket.holdsOn(today.day())) {
                kinds.add(ticket.kind());
            }
        }
        return kinds;
    }
}
