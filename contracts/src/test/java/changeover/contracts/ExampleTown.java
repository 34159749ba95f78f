package changeover.contracts;

import changeover.contracts.Examples.Block;
import changeover.contracts.Examples.Code;
import changeover.contracts.Examples.Danger;
import changeover.contracts.Examples.House;
import changeover.contracts.Examples.Party;
import changeover.contracts.Examples.Shop;
import changeover.contracts.Examples.Unit;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Kind;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** An invented town around a shop: streets, households and their machines, drawn with one seed. */
final class ExampleTown {

    private static final LocalDate SINCE = LocalDate.of(2024, 9, 1);

    /** What stands in an ordinary home, four sorts of home. */
    private static final List<List<String>> SORTS = List.of(
            List.of("outdoor-heat-pump", "air-handler", "filter-slot", "condensate", "humidifier-bypass", "hrv"),
            List.of("outdoor-heat-pump", "ductless-head", "ductless-head", "hrv"),
            List.of(
                    "gas-furnace",
                    "furnace-coil",
                    "air-conditioner",
                    "filter-slot",
                    "condensate",
                    "humidifier-fan",
                    "co-alarm"),
            List.of("electric-furnace", "filter-slot", "erv", "heat-pump-water-heater", "humidifier-steam"));

    private final Shop shop;
    private final boolean french;
    private final Random random;
    private final ExampleUnits units;
    private final ExampleNames names;

    ExampleTown(Shop shop) {
        this.shop = shop;
        this.french = shop.language().equals("fr");
        this.random = new Random(shop.slug().hashCode());
        this.units = new ExampleUnits(shop.language(), random);
        this.names = new ExampleNames(french);
    }

    List<House> homes(int count) {
        List<House> homes = new ArrayList<>();
        homes.add(everyKind());
        homes.addAll(triplex());
        homes.add(commercial());
        homes.add(toBeRead());
        for (int number = homes.size(); number < count; number++) {
            homes.add(ordinary(number));
        }
        return List.copyOf(homes.subList(0, count));
    }

    private House everyKind() {
        Party owner = party(0);
        List<Unit> all = Catalogue.shipped().kinds().stream()
                .map(Kind::code)
                .map(kind -> units.of(kind, null, 2019))
                .toList();
        return house(0, null, null, owner, owner, owner, false, all)
                .with(
                        say("Side door, ring twice.", "Porte de côté, sonnez deux fois."),
                        List.of(
                                new Code("code", say("side door", "porte de côté"), "4711"),
                                new Code("alarm", "", "0815")),
                        List.of(
                                new Danger("dog", say("Friendly, but loud.", "Gentil, mais bruyant.")),
                                new Danger(
                                        "ladder",
                                        say("Attic ladder without a rail.", "Échelle du grenier sans rampe."))));
    }

    private List<House> triplex() {
        String street = names.street(7, 3);
        Block block = new Block(
                say("Three Gates House", "Maison des Trois-Portes"),
                street,
                shop.city(),
                region(),
                shop.postal(),
                "CA",
                List.of(units.of("rooftop-unit", say("common stairs", "escalier commun"), 2020)));
        Party company = new Party(
                say("Three Gates Holdings", "Gestion Trois-Portes inc."),
                shop.language(),
                phone(90),
                "accounts@threegates.example.com",
                "one");
        List<House> homes = new ArrayList<>();
        for (int door = 1; door <= 3; door++) {
            List<Unit> here = List.of(
                    units.of("ductless-head", null, 2021),
                    units.of("hrv", null, 2021),
                    units.of("co-alarm", null, 2021));
            homes.add(house(door, block, String.valueOf(door), company, company, party(door), false, here)
                    .with(
                            say("Ask the occupant.", "Demandez à l’occupant."),
                            List.of(new Code("key", say("front", "entrée"), say("box 3, shop", "boîte 3, atelier"))),
                            List.of()));
        }
        return homes;
    }

    private House commercial() {
        Party bakery = new Party(
                say("Larkrise Bakery Ltd.", "Boulangerie Millefleurs inc."),
                shop.language(),
                phone(91),
                "office@bakery.example.com",
                "each");
        List<Unit> roof = List.of(
                units.of("rooftop-unit", say("shop", "boutique"), 2018),
                units.of("rooftop-unit", say("oven room", "fournil"), 2018));
        return house(4, null, null, bakery, bakery, bakery, false, roof)
                .with(
                        say("Ladder at the back, after 9 o’clock.", "Échelle à l’arrière, après 9 h."),
                        List.of(),
                        List.of(new Danger(
                                "asbestos", say("Suspected in the old ceiling.", "Soupçonné dans l’ancien plafond."))));
    }

    private House toBeRead() {
        Party owner = party(5);
        return house(5, null, null, owner, owner, owner, true, List.of());
    }

    private House ordinary(int number) {
        Party owner = party(number);
        List<String> kinds =
                SORTS.get(french ? random.nextInt(20) % 4 : new int[] {2, 2, 0, 1, 2, 3}[random.nextInt(6)]);
        int year = 2012 + random.nextInt(13);
        List<Unit> here = new ArrayList<>();
        int heads = 0;
        for (String kind : kinds) {
            here.add(units.of(kind, kind.equals("ductless-head") ? names.room(heads++) : null, year));
        }
        boolean rented = random.nextInt(10) == 0;
        Party landlord = rented ? party(number + 20) : owner;
        return house(number, null, null, landlord, landlord, owner, false, here);
    }

    private House house(
            int number,
            @Nullable Block block,
            @Nullable String label,
            Party signs,
            Party pays,
            Party lives,
            boolean toBeRead,
            List<Unit> here) {
        String street = block == null ? names.street(number, random.nextInt(180)) : block.street();
        return new House(
                "H-" + (1001 + number),
                block,
                label,
                street,
                shop.city(),
                region(),
                names.postal(number, shop.postal()),
                "CA",
                degrees(latitude(french)),
                degrees(longitude(french)),
                number == 4 ? "commercial" : "residential",
                1950 + random.nextInt(70),
                null,
                toBeRead,
                SINCE,
                signs,
                pays,
                lives,
                number == 4 ? "PO-0417" : null,
                here,
                List.of(),
                List.of());
    }

    static String latitude(boolean french) {
        return french ? "45.412" : "44.218";
    }

    static String longitude(boolean french) {
        return french ? "-73.021" : "-77.604";
    }

    private BigDecimal degrees(String centre) {
        return new BigDecimal(centre)
                .add(BigDecimal.valueOf(random.nextInt(1600) - 800, 4))
                .stripTrailingZeros();
    }

    private Party party(int number) {
        String name = names.person(number);
        boolean mails = number % 8 != 7;
        return new Party(name, names.language(number), phone(number), mails ? names.mail(name, number) : null, "one");
    }

    /** 555-01xx in one area code for each hundred. */
    private String phone(int number) {
        int area = (french ? 450 : 613) + number / 100;
        return area + " 555-01" + String.format("%02d", number % 100);
    }

    private String region() {
        return shop.place().substring(3);
    }

    private String say(String en, String fr) {
        return french ? fr : en;
    }
}
