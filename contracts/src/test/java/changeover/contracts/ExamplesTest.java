package changeover.contracts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.Examples.House;
import changeover.contracts.Examples.Shop;
import changeover.contracts.Examples.Unit;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Kind;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ExamplesTest {

    @Test
    void the_same_homes_come_every_time() {
        for (Shop shop : Examples.SHOPS) {
            assertEquals(Examples.homes(shop), Examples.homes(shop));
            assertEquals(60, Examples.homes(shop).size());
        }
    }

    @Test
    void the_first_home_shows_every_kind_that_the_catalogue_knows() {
        Set<String> shown = new HashSet<>();
        Examples.everyKind(Examples.LISIERE).units().forEach(unit -> shown.add(unit.kind()));
        Set<String> known = new HashSet<>();
        Catalogue.shipped().kinds().forEach(kind -> known.add(kind.code()));
        assertEquals(known, shown);
    }

    @Test
    void every_plate_says_what_its_kind_allows() {
        for (Shop shop : Examples.SHOPS) {
            for (House house : Examples.homes(shop, 300)) {
                Set<String> names = new HashSet<>();
                house.units().forEach(unit -> {
                    assertAllowed(unit);
                    assertTrue(names.add(unit.name()), () -> house.key() + " has twice " + unit.name());
                });
            }
        }
    }

    private static void assertAllowed(Unit unit) {
        Kind kind = Catalogue.shipped().kind(unit.kind());
        for (Map.Entry<String, String> pair : unit.fits().entrySet()) {
            assertTrue(
                    kind.fit(pair.getKey())
                            .orElseThrow(() -> new AssertionError(unit.kind() + " " + pair))
                            .allows(pair.getValue()),
                    () -> unit.kind() + " " + pair);
        }
        for (Map.Entry<String, String> pair : unit.nameplate().entrySet()) {
            assertTrue(
                    kind.plate(pair.getKey())
                            .orElseThrow(() -> new AssertionError(unit.kind() + " " + pair))
                            .allows(pair.getValue()),
                    () -> unit.kind() + " " + pair);
        }
    }

    @Test
    void nobody_can_be_rung_or_written_to() {
        for (Shop shop : Examples.SHOPS) {
            for (House house : Examples.homes(shop, 200)) {
                for (Examples.Party party : List.of(house.signs(), house.pays(), house.lives())) {
                    assertTrue(party.phone() == null || party.phone().matches("\\d{3} 555-01\\d\\d"), party.phone());
                    assertTrue(party.email() == null || party.email().endsWith("example.com"), party.email());
                }
            }
        }
    }

    @Test
    void a_triplex_has_one_payer_and_three_households() {
        List<House> doors = Examples.triplex(Examples.KILN_LANE);
        assertEquals(1, doors.stream().map(House::pays).distinct().count());
        assertEquals(3, doors.stream().map(House::lives).distinct().count());
        assertEquals(1, doors.stream().map(House::block).distinct().count());
    }
}
