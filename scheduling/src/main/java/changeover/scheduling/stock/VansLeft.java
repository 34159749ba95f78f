package changeover.scheduling.stock;

import changeover.contracts.tenants.Ids;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.stock.KnownPart.Amount;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;

/** The van of somebody who leaves is counted and emptied: what lies in it goes to the shelf or to another van. */
@ApplicationScoped
public class VansLeft {

    /** What should lie in a van, or was counted there. */
    public record Lying(String part, BigDecimal quantity) {}

    @Inject
    StockPlaces places;

    @Inject
    Stock stock;

    @Inject
    Parts parts;

    @Inject
    EntityManager rows;

    @Inject
    Today today;

    /** Their van while it is in use. */
    public Optional<StockPlace> van(UUID person) {
        return places.vanOf(person).filter(van -> van.closedOn().isEmpty());
    }

    /** What should lie in it, of the parts that the business still carries. */
    public List<Lying> lying(UUID van) {
        return stock.onHand(van).entrySet().stream()
                .filter(entry -> parts.find(entry.getKey()).isPresent())
                .map(entry -> new Lying(entry.getKey(), entry.getValue()))
                .toList();
    }

    /**
     * What was counted is written for a reason, goes to the other place, and the van is in use no longer. Whatever should lie
     * there and was not counted was not there.
     */
    public void empty(UUID person, UUID to, List<Lying> counted, String why) {
        StockPlace van =
                van(person).orElseThrow(() -> Refusal.of("leaving.no-van").thrown());
        StockPlace other = places.find(to)
                .filter(place -> place.closedOn().isEmpty())
                .orElseThrow(() -> Refusal.of("stock.place-not-found").at("to").thrown());
        if (other.id().equals(van.id())) {
            throw Refusal.of("stock.same-place").at("to").thrown();
        }
        Map<String, BigDecimal> there = new TreeMap<>();
        lying(van.id()).forEach(one -> there.put(one.part(), BigDecimal.ZERO));
        counted.forEach(one -> there.merge(one.part(), one.quantity(), BigDecimal::add));
        if (!there.isEmpty()) {
            stock.count(Ids.next(), van.id(), amounts(there), why);
        }
        there.values().removeIf(quantity -> quantity.signum() <= 0);
        if (!there.isEmpty()) {
            stock.move(Ids.next(), van.id(), other.id(), amounts(there), why);
        }
        van.close(today.day());
        rows.flush();
    }

    private static List<Amount> amounts(Map<String, BigDecimal> there) {
        return there.entrySet().stream()
                .map(entry -> new Amount(entry.getKey(), entry.getValue()))
                .toList();
    }
}
