package changeover.contracts;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Invented businesses, people, streets and machines, the same every time: what the tests and the demonstration are made
 * of. Telephones are 555-01xx, mail is example.com, no name or make is anybody's.
 */
public final class Examples {

    /** A service business with its people. */
    public record Shop(
            String slug,
            String name,
            String language,
            String place,
            String street,
            String city,
            String postal,
            String phone,
            String email,
            @Nullable String gst,
            @Nullable String qst,
            String licence,
            List<Worker> people) {}

    /** Somebody who works there. @param role owner, office or technician @param tickets kinds of licence cards held */
    public record Worker(String name, String email, String language, String role, List<String> tickets) {}

    /** Somebody the shop works for. @param invoices one or each */
    public record Party(
            String name,
            String language,
            @Nullable String phone,
            @Nullable String email,
            String invoices) {}

    /** One machine. */
    public record Unit(
            String kind,
            String name,
            @Nullable String make,
            @Nullable String model,
            @Nullable String serial,
            @Nullable String location,
            @Nullable LocalDate installedOn,
            @Nullable String installedBy,
            @Nullable LocalDate makerWarrantyUntil,
            @Nullable LocalDate labourWarrantyUntil,
            @Nullable String registration,
            Map<String, String> fits,
            Map<String, String> nameplate) {}

    /** A key or a code. @param kind key, code or alarm */
    public record Code(String kind, String label, String secret) {}

    /** A danger. @param kind dog, ladder, asbestos or other */
    public record Danger(String kind, String note) {}

    /** A building of several homes, with the machines it has in common. */
    public record Block(
            String name, String street, String city, String region, String postal, String country, List<Unit> common) {}

    /**
     * One dwelling and everybody it concerns.
     *
     * @param since the day from which the parts are played
     */
    public record House(
            String key,
            @Nullable Block block,
            @Nullable String unitLabel,
            String street,
            String city,
            String region,
            String postal,
            String country,
            BigDecimal latitude,
            BigDecimal longitude,
            String propertyUse,
            @Nullable Integer builtIn,
            @Nullable String gettingIn,
            boolean toBeRead,
            LocalDate since,
            Party signs,
            Party pays,
            Party lives,
            @Nullable String purchaseOrder,
            List<Unit> units,
            List<Code> codes,
            List<Danger> dangers) {

        /** The same house with only these kinds of machines in it. */
        public House keeping(String... kinds) {
            List<String> kept = List.of(kinds);
            return with(
                    units.stream().filter(unit -> kept.contains(unit.kind())).toList(), gettingIn, codes, dangers);
        }

        House with(String gettingIn, List<Code> codes, List<Danger> dangers) {
            return with(units, gettingIn, codes, dangers);
        }

        private House with(List<Unit> standing, @Nullable String comesIn, List<Code> secrets, List<Danger> beware) {
            return new House(
                    key,
                    block,
                    unitLabel,
                    street,
                    city,
                    region,
                    postal,
                    country,
                    latitude,
                    longitude,
                    propertyUse,
                    builtIn,
                    comesIn,
                    toBeRead,
                    since,
                    signs,
                    pays,
                    lives,
                    purchaseOrder,
                    standing,
                    secrets,
                    beware);
        }
    }

    /** A shop of Quebec that works in French. */
    public static final Shop LISIERE = new Shop(
            "thermo-lisiere",
            "Thermo Lisière inc.",
            "fr",
            "CA-QC",
            "118, rue du Four-à-Chaux",
            "Val-Clairon",
            "J0Z 1A1",
            "450 555-0100",
            "bonjour@lisiere.example.com",
            "555555555 RT0001",
            "5555555555 TQ0001",
            "5555-5555-01",
            List.of(
                    new Worker("Maude Larivée-Roy", "maude@lisiere.example.com", "fr", "owner", List.of()),
                    new Worker("Odile Beauchemin", "odile@lisiere.example.com", "fr", "office", List.of()),
                    new Worker(
                            "Samuel Trottier",
                            "samuel@lisiere.example.com",
                            "fr",
                            "technician",
                            List.of("refrigerant", "gas", "electrical")),
                    new Worker(
                            "Inès Haddad",
                            "ines@lisiere.example.com",
                            "fr",
                            "technician",
                            List.of("refrigerant", "gas")),
                    new Worker(
                            "Théo Vaillancourt",
                            "theo@lisiere.example.com",
                            "fr",
                            "technician",
                            List.of("refrigerant"))));

    /** A shop of Ontario that works in English. */
    public static final Shop KILN_LANE = new Shop(
            "kiln-lane",
            "Kiln Lane Heating & Cooling",
            "en",
            "CA-ON",
            "7 Kiln Lane",
            "Port Ambrose",
            "K0Z 1A1",
            "613 555-0100",
            "hello@kilnlane.example.com",
            "555555556 RT0001",
            null,
            "ON-555-0101",
            List.of(
                    new Worker("Ida Rowntree", "ida@kilnlane.example.com", "en", "owner", List.of()),
                    new Worker("Wes Okafor", "wes@kilnlane.example.com", "en", "office", List.of()),
                    new Worker(
                            "Priya Nair",
                            "priya@kilnlane.example.com",
                            "en",
                            "technician",
                            List.of("refrigerant", "gas", "electrical")),
                    new Worker(
                            "Colm Devlin",
                            "colm@kilnlane.example.com",
                            "en",
                            "technician",
                            List.of("refrigerant", "gas")),
                    new Worker(
                            "Joss Tremaine", "joss@kilnlane.example.com", "en", "technician", List.of("refrigerant"))));

    public static final List<Shop> SHOPS = List.of(LISIERE, KILN_LANE);

    private Examples() {}

    /**
     * The shop's homes, always the same: first the home that shows every kind of equipment, then a triplex with one
     * payer, a small commercial roof, a home whose machines are still to be read, and ordinary homes.
     */
    public static List<House> homes(Shop shop, int count) {
        return new ExampleTown(shop).homes(count);
    }

    /** The sixty homes of the demonstration. */
    public static List<House> homes(Shop shop) {
        return homes(shop, 60);
    }

    /** The middle of the town, degrees north: where the shop stands. */
    public static BigDecimal latitude(Shop shop) {
        return new BigDecimal(ExampleTown.latitude(shop.language().equals("fr")));
    }

    /** The middle of the town, degrees east. */
    public static BigDecimal longitude(Shop shop) {
        return new BigDecimal(ExampleTown.longitude(shop.language().equals("fr")));
    }

    /** The home that shows every kind of equipment. */
    public static House everyKind(Shop shop) {
        return homes(shop, 1).getFirst();
    }

    /** The three homes of the triplex, of which one company signs and pays. */
    public static List<House> triplex(Shop shop) {
        return homes(shop, 4).subList(1, 4);
    }
}
