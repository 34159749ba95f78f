package changeover.contracts;

import changeover.contracts.Examples.Block;
import changeover.contracts.Examples.House;
import changeover.contracts.Examples.Party;
import changeover.contracts.Examples.Unit;
import changeover.contracts.customers.AccessCodes;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Building;
import changeover.contracts.customers.Buildings;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Hazard;
import changeover.contracts.customers.Hazards;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.customers.PartInHome;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;

/**
 * Enters examples into the register by its own verbs, a party once. Best one transaction a home: a long one looks through
 * everything it has entered before each statement.
 */
public final class ExampleRegister {

    private final Customers customers;
    private final Buildings buildings;
    private final Homes homes;
    private final HomeParts parts;
    private final AllEquipment equipment;
    private final Hazards hazards;
    private final AccessCodes codes;

    private final Map<Party, UUID> known = new HashMap<>();
    private final Map<Block, UUID> blocks = new HashMap<>();

    public ExampleRegister(
            Customers customers,
            Buildings buildings,
            Homes homes,
            HomeParts parts,
            AllEquipment equipment,
            Hazards hazards,
            AccessCodes codes) {
        this.customers = customers;
        this.buildings = buildings;
        this.homes = homes;
        this.parts = parts;
        this.equipment = equipment;
        this.hazards = hazards;
        this.codes = codes;
    }

    /** Enters the home, its people, machines, codes and dangers; answers its id. */
    public UUID enter(House house) {
        UUID home = homes.add(house.key(), facts(house)).id();
        UUID signs = party(house.signs());
        UUID pays = party(house.pays());
        UUID lives = party(house.lives());
        parts.begin(home, signs, PartInHome.SIGNS, house.since(), null);
        parts.begin(home, pays, PartInHome.PAYS, house.since(), house.purchaseOrder());
        parts.begin(home, lives, PartInHome.LIVES, house.since(), null);
        parts.begin(home, lives, PartInHome.LETS_IN, house.since(), null);
        parts.begin(home, signs, PartInHome.GETS_REPORT, house.since(), null);
        house.units().forEach(unit -> equipment.addToHome(home, facts(unit)));
        house.codes().forEach(code -> codes.add(home, code.kind(), code.label(), code.secret()));
        house.dangers()
                .forEach(danger -> hazards.add(Hazard.seen(
                        home, danger.kind(), danger.note(), house.lives().language(), house.since())));
        return home;
    }

    private Home.Facts facts(House house) {
        Block block = house.block();
        return new Home.Facts(
                block == null ? null : building(block),
                house.unitLabel(),
                house.street(),
                house.city(),
                house.region(),
                house.postal(),
                house.country(),
                house.latitude(),
                house.longitude(),
                house.propertyUse(),
                house.builtIn(),
                house.gettingIn(),
                house.toBeRead());
    }

    /** The party's customer, entered when it is met for the first time. */
    public UUID party(Party party) {
        return known.computeIfAbsent(
                party,
                one -> customers
                        .add(new Customer.Facts(
                                one.name(),
                                one.language(),
                                one.phone(),
                                one.email(),
                                null,
                                null,
                                null,
                                null,
                                null,
                                one.invoices(),
                                null,
                                null,
                                null,
                                null))
                        .id());
    }

    private UUID building(Block block) {
        return blocks.computeIfAbsent(block, one -> {
            UUID id = buildings
                    .add(new Building.Facts(
                            one.name(), one.street(), one.city(), one.region(), one.postal(), one.country(), null))
                    .id();
            one.common().forEach(unit -> equipment.addToBuilding(id, facts(unit)));
            return id;
        });
    }

    /** The machine as the register writes it. */
    public static Equipment.Facts facts(Unit unit) {
        return new Equipment.Facts(
                null,
                unit.kind(),
                unit.name(),
                unit.make(),
                unit.model(),
                unit.serial(),
                unit.location(),
                unit.installedOn(),
                unit.installedBy(),
                unit.makerWarrantyUntil(),
                unit.labourWarrantyUntil(),
                unit.registration(),
                unit.fits(),
                unit.nameplate());
    }
}
