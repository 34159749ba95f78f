package changeover.web.office;

import changeover.contracts.calendar.Window;
import changeover.scheduling.dayplan.DayPlan;
import changeover.scheduling.dayplan.NeededParts;
import changeover.scheduling.dayplan.VanNeeds;
import changeover.scheduling.orders.OrderNeeds;
import changeover.scheduling.stock.Held;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Loading;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.StockLists;
import changeover.scheduling.stock.StockPlace;
import changeover.scheduling.stock.StockPlaces;
import changeover.scheduling.stock.Supplies;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;

/** The vans of the business against the visits of some days: what each needs, holds and lacks. */
@ApplicationScoped
public class VanLoads {

    @Inject
    VanNeeds needs;

    @Inject
    OrderNeeds ordered;

    @Inject
    Parts parts;

    @Inject
    StockPlaces places;

    @Inject
    StockLists stock;

    @Inject
    Supplies supplies;

    /**
     * @param notCarried by van: what its visits need and the business carries in no such size
     * @param shelf where the vans are loaded from; empty for a business without one
     */
    public record Seen(
            Loading loading,
            Map<UUID, StockPlace> places,
            Map<String, KnownPart> parts,
            Map<UUID, List<DayPlan.Load>> notCarried,
            Optional<StockPlace> shelf) {}

    /** @param today what lies where is read at its end */
    public Seen of(Window days, LocalDate today) {
        List<StockPlace> inUse = places.all();
        Map<UUID, StockPlace> all = new HashMap<>();
        inUse.forEach(place -> all.put(place.id(), place));
        Map<UUID, Map<String, BigDecimal>> held = held(today, all);
        Map<UUID, Map<String, BigDecimal>> least = supplies.minimums();
        List<KnownPart> carried = parts.all();
        Map<UUID, List<DayPlan.Load>> asked = needs.in(days);
        Map<UUID, Map<String, BigDecimal>> ofOrders = ordered.in(days);
        Map<UUID, List<DayPlan.Load>> notCarried = new HashMap<>();
        List<Loading.Asked> vans = new ArrayList<>();
        for (StockPlace van : inUse) {
            UUID person = van.personId().orElse(null);
            if (person == null) {
                continue;
            }
            NeededParts needed = NeededParts.of(asked.getOrDefault(person, List.of()), carried);
            Map<String, BigDecimal> quantities = new TreeMap<>(needed.quantities());
            ofOrders.getOrDefault(person, Map.of())
                    .forEach((part, quantity) -> quantities.merge(part, quantity, BigDecimal::add));
            Map<String, BigDecimal> minimum = least.getOrDefault(van.id(), Map.of());
            notCarried.put(van.id(), needed.notCarried());
            if (!quantities.isEmpty()
                    || !minimum.isEmpty()
                    || !needed.notCarried().isEmpty()) {
                vans.add(new Loading.Asked(van.id(), quantities, minimum, held.getOrDefault(van.id(), Map.of())));
            }
        }
        Optional<StockPlace> shelf = inUse.stream().filter(StockPlace::isShelf).findFirst();
        Loading loading = Loading.of(
                vans,
                shelf.map(place -> held.getOrDefault(place.id(), Map.of())).orElse(Map.of()),
                shelf.map(place -> least.getOrDefault(place.id(), Map.of())).orElse(Map.of()));
        Map<String, KnownPart> byCode = new HashMap<>();
        carried.forEach(part -> byCode.put(part.code(), part));
        return new Seen(loading, all, byCode, notCarried, shelf);
    }

    private Map<UUID, Map<String, BigDecimal>> held(LocalDate today, Map<UUID, StockPlace> all) {
        Map<UUID, Map<String, BigDecimal>> held = new HashMap<>();
        for (Held one : stock.held(today, all.keySet(), null)) {
            held.computeIfAbsent(one.placeId(), _ -> new TreeMap<>()).put(one.partCode(), one.quantity());
        }
        return held;
    }
}
