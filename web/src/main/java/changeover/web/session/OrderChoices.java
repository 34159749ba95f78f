package changeover.web.session;

import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Homes;
import changeover.scheduling.returns.ReturnVisits;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.StockPlaces;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.Stream;

/** What a form about parts lets one choose from: parts, the home's machines, the places of the shop. */
@ApplicationScoped
public class OrderChoices {

    public record Choice(String code, String words) {}

    @Inject
    Parts parts;

    @Inject
    AllEquipment equipment;

    @Inject
    Homes homes;

    @Inject
    StockPlaces places;

    @Inject
    ReturnVisits returns;

    public List<Choice> parts(Locale locale) {
        return parts.all().stream()
                .map(part -> new Choice(part.code(), words(part, locale)))
                .toList();
    }

    private static String words(KnownPart part, Locale locale) {
        String name = part.name().in(locale);
        return part.size() == null || name.contains(part.size()) ? name : name + ", " + part.size();
    }

    /** The parts that a visit used. */
    public List<Choice> used(UUID visit, Locale locale) {
        return returns.partsUsed(visit).entrySet().stream()
                .map(part -> new Choice(part.getKey(), part.getValue().in(locale)))
                .toList();
    }

    /** Those of the home, then those of its building. */
    public List<Choice> machines(UUID home) {
        return Stream.concat(
                        equipment.ofHome(home).stream(),
                        homes.get(home).flatMap(one -> one.buildingId()).stream()
                                .flatMap(building -> equipment.ofBuilding(building).stream()))
                .map(OrderChoices::machine)
                .toList();
    }

    private static Choice machine(Equipment machine) {
        return new Choice(machine.id().toString(), machine.name());
    }

    /** The shelf first, then the vans. */
    public List<Choice> places() {
        return places.all().stream()
                .map(place -> new Choice(place.id().toString(), place.name()))
                .toList();
    }
}
