package changeover.web.office;

import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Buildings;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Today;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.NotFoundException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Where a machine stands: in a home, or in a building whose homes it serves in common. */
@ApplicationScoped
public class MachinePlaces {

    @Inject
    Homes homes;

    @Inject
    Buildings buildings;

    @Inject
    AllEquipment equipment;

    @Inject
    Customers customers;

    @Inject
    PeopleOfHomes people;

    @Inject
    Today today;

    /**
     * @param where homes or buildings: the first word of its address
     * @param people who may own a machine there
     */
    public record Place(UUID id, String where, String name, List<PeopleOfHomes.Who> people) {

        public String path() {
            return where + "/" + id;
        }

        boolean isHome() {
            return where.equals("homes");
        }
    }

    Optional<Place> of(String where, UUID id) {
        return where.equals("homes")
                ? homes.get(id).map(this::home)
                : buildings.get(id).map(one -> new Place(id, where, one.name(), List.of()));
    }

    private Place home(Home home) {
        return new Place(home.id(), "homes", home.line(), people.today(home.id(), today.day()));
    }

    /** The machine, when it stands there. */
    Optional<Equipment> machine(Place place, UUID id) {
        return equipment
                .get(id)
                .filter(machine -> (place.isHome() ? machine.homeId() : machine.buildingId())
                        .filter(place.id()::equals)
                        .isPresent());
    }

    /** An owner whom nobody here knows is not found. */
    Equipment.Facts ownedHere(Equipment.Facts facts) {
        UUID owner = facts.ownerId();
        if (owner != null && customers.get(owner).isEmpty()) {
            throw new NotFoundException();
        }
        return facts;
    }

    Equipment add(Place place, Equipment.Facts facts) {
        return place.isHome() ? equipment.addToHome(place.id(), facts) : equipment.addToBuilding(place.id(), facts);
    }
}
