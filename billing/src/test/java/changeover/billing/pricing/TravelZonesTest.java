package changeover.billing.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a trip costs, by where the home lies. */
class TravelZonesTest {

    static final LocalDate DAY = LocalDate.of(2027, 2, 1);
    static final TravelZones ZONES = new TravelZones(List.of(
            zone("river", "2026-01-01", null, "X0X", "X1"),
            zone("island", "2026-01-01", null, "X0X9"),
            zone("near", "2026-01-01", 10),
            zone("far", "2026-01-01", 40),
            zone("far", "2027-06-01", 60),
            zone("both", "2027-06-01", 25, "X2")));

    @Test
    void the_longest_beginning_of_the_postal_code_goes_before_any_distance() {
        check("X0X 1A2", "5.0", "river", "Zone River: the postal code begins with X0X.");
        check("x0x-9b9", "5.0", "island", "Zone Island: the postal code begins with X0X9.");
        check("X1Y 1A2", null, "river", "Zone River: the postal code begins with X1.");
    }

    @Test
    void without_one_the_nearest_zone_that_reaches_as_far() {
        check("Z9Z 1A2", "10.0", "near", "Zone Near: 10.0 km from our shop as the crow flies.");
        check("Z9Z 1A2", "10.1", "far", "Zone Far: 10.1 km from our shop as the crow flies.");
        check("", "40.0", "far", "Zone Far: 40.0 km from our shop as the crow flies.");
    }

    @Test
    void elsewhere_and_where_the_place_is_unknown_the_ordinary_fee() {
        check(
                "Z9Z 1A2",
                "40.1",
                "none",
                "Outside our zones, 40.1 km from our shop as the crow flies: the ordinary fee.");
        check("Z9Z 1A2", null, "none", "No zone is known for this home: the ordinary fee.");
    }

    @Test
    void a_zone_holds_from_its_day_on() {
        assertEquals("far", code(LocalDate.of(2027, 6, 1), "", "59.9"));
        assertEquals("both", code(LocalDate.of(2027, 6, 1), "", "24.9"));
        assertEquals("none", code(LocalDate.of(2027, 5, 31), "", "59.9"));
        assertEquals(true, ZONES.of(LocalDate.of(2025, 12, 31), "X0X", null).isEmpty());
    }

    @Test
    void the_zones_of_a_day_are_the_latest_of_each_that_are_not_closed() {
        TravelZones zones = new TravelZones(List.of(
                zone("north", "2026-01-01", 10),
                zone("north", "2026-03-01", 20),
                closed("north", "2026-09-01"),
                zone("north", "2027-01-01", 30)));
        held(zones, "2025-12-31", "[]");
        held(zones, "2026-02-28", "[10]");
        held(zones, "2026-03-01", "[20]");
        held(zones, "2026-09-01", "[]");
        held(zones, "2027-01-01", "[30]");
    }

    @Test
    void of_two_zones_that_reach_a_home_the_nearer_one_whatever_their_order() {
        TravelZones zones = new TravelZones(List.of(zone("a", "2026-01-01", 40), zone("b", "2026-01-01", 10)));
        TravelZone found =
                zones.of(DAY, "", new BigDecimal("5.0")).orElseThrow().zone();
        assertEquals("b", found == null ? "none" : found.code());
        TravelZones posts =
                new TravelZones(List.of(zone("a", "2026-01-01", null, "X"), zone("b", "2026-01-01", null, "X0X9")));
        TravelZone longest = posts.of(DAY, "X0X 9A1", null).orElseThrow().zone();
        assertEquals("b", longest == null ? "none" : longest.code());
    }

    private static void held(TravelZones zones, String day, String expected) {
        assertEquals(
                expected,
                zones.on(LocalDate.parse(day)).stream()
                        .map(TravelZone::withinKm)
                        .toList()
                        .toString());
    }

    private static TravelZone closed(String code, String from) {
        return new TravelZone(code, new Wording(code, code), List.of(), null, LocalDate.parse(from), true);
    }

    @Test
    void a_distance_is_judged_as_it_is_said() {
        assertEquals("10.0", TravelZones.kilometres(10_049).toPlainString());
        assertEquals("10.1", TravelZones.kilometres(10_050).toPlainString());
    }

    @Test
    void a_trip_costs_its_zones_fee_else_the_ordinary_one_and_says_so() {
        trip(
                "river",
                "80.00",
                "river 80.00 Zone River: the postal code begins with X0X. Not covered by a plan.",
                "X0X");
        trip(
                "near",
                "30.00",
                "visit 45.00 Zone River has no fee of its own: the ordinary fee. Not covered by a plan.",
                "X0X");
        trip(
                "river",
                "80.00",
                "visit 45.00 No zone is known for this home: the ordinary fee. Not covered by a plan.",
                "Z1Z");
    }

    private static void trip(String priced, String price, String expected, String postal) {
        var book = new PriceBook(List.of(travel(PriceBook.VISIT, "45.00"), travel(priced, price)));
        var visit = new ClosedVisit(
                DAY,
                VisitKind.CALL,
                0,
                0,
                OutsideHours.NONE,
                List.of(),
                ZONES.of(DAY, postal, null).orElseThrow());
        Charge charge = Charges.of(visit, Coverage.NONE, book, Currency.getInstance("CAD"))
                .getFirst();
        assertEquals(
                expected,
                charge.item() + " " + charge.net().decimal() + " "
                        + charge.why().en());
    }

    private static PriceEntry travel(String code, String price) {
        return new PriceEntry(ItemKind.TRAVEL, code, Money.of(price, "CAD"), null, DAY);
    }

    private static void check(String postal, @Nullable String kilometres, String zone, String how) {
        ZoneOfHome found = found(DAY, postal, kilometres);
        assertEquals(
                zone + " " + how,
                code(DAY, postal, kilometres) + " " + found.how().en());
    }

    private static String code(LocalDate day, String postal, @Nullable String kilometres) {
        TravelZone zone = found(day, postal, kilometres).zone();
        return zone == null ? "none" : zone.code();
    }

    private static ZoneOfHome found(LocalDate day, String postal, @Nullable String kilometres) {
        return ZONES.of(day, postal, kilometres == null ? null : new BigDecimal(kilometres))
                .orElseThrow();
    }

    private static TravelZone zone(String code, String from, @Nullable Integer km, String... postals) {
        String name = code.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + code.substring(1);
        return new TravelZone(
                code, new Wording(name, name), new ArrayList<>(List.of(postals)), km, LocalDate.parse(from), false);
    }
}
