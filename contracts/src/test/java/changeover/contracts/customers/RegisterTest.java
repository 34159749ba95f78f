package changeover.contracts.customers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.NewBusiness;
import changeover.contracts.tenants.Place;
import changeover.contracts.words.Constraints;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refused;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class RegisterTest {

    static final LocalDate DAY = LocalDate.of(2026, 4, 1);

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    @Inject
    Customers customers;

    @Inject
    Homes homes;

    @Inject
    HomeParts parts;

    @Inject
    AllEquipment equipment;

    @Inject
    AccessCodes codes;

    @Inject
    Hazards hazards;

    UUID tenant = UUID.randomUUID();

    @BeforeEach
    void aBusinessOpens() {
        tenant = open();
    }

    private UUID open() {
        UUID id = UUID.randomUUID();
        current.run(
                id,
                CurrentTenant.NOBODY,
                () -> businesses.open(
                        new NewBusiness(
                                "r" + id.toString().substring(0, 12),
                                "Maison Boréale",
                                "1, rue du Four",
                                Place.of("CA-QC"),
                                "fr",
                                null,
                                null,
                                null,
                                null,
                                null,
                                true),
                        DAY));
        return id;
    }

    private UUID person = UUID.randomUUID();

    private UUID aHome(String street) {
        return current.run(tenant, person, () -> {
            Customer anne = customers.add(Customer.Facts.of("Anne Lafleur", "fr", "514 555-0142", "anne@example.com"));
            Home home = homes.add(Home.Facts.at(street, "Val-Clair", "QC", "H0H 0H0", "CA"));
            parts.beginAll(home.id(), anne.id(), DAY);
            return home.id();
        });
    }

    private static Equipment.Facts pump(String name) {
        return new Equipment.Facts(
                null,
                "outdoor-heat-pump",
                name,
                "Borealis",
                "HX-30",
                "SN-00.17 A",
                "mur nord",
                null,
                null,
                null,
                null,
                null,
                Map.of(),
                Map.of("volts", "240"));
    }

    @Test
    void a_home_is_found_by_name_street_phone_or_serial() {
        UUID home = aHome("12, rue de l’Église");
        current.run(tenant, person, () -> equipment.addToHome(home, pump("Thermopompe")));
        for (String asked : List.of(
                "lafleur",
                "EGLISE",
                "l'église 12",
                "(514) 555-0142",
                "+1 514 555 0142",
                "5550142",
                "sn0017a",
                "SN-00.17",
                "anne val-clair",
                "")) {
            List<FoundHome> found = current.run(tenant, person, () -> homes.find(asked, 10));
            assertEquals(List.of(home), found.stream().map(FoundHome::id).toList(), asked);
            assertEquals("Anne Lafleur", found.getFirst().customer());
            assertEquals(1, found.getFirst().units());
        }
        assertTrue(
                current.run(tenant, person, () -> homes.find("lafleur %", 10)).size() == 1);
        assertTrue(current.run(tenant, person, () -> homes.find("nobody' or '1'='1", 10))
                .isEmpty());
        aHome("112, rue de l’Église");
        aHome("125, rue de l’Église");
        assertEquals(
                home,
                current.run(tenant, person, () -> homes.find("12 église", 10))
                        .getFirst()
                        .id());
        UUID other = open();
        assertTrue(current.run(other, person, () -> homes.find("lafleur", 10)).isEmpty());
    }

    @Test
    void the_second_editor_is_refused() {
        UUID home = aHome("13, rue Basse");
        int version =
                current.run(tenant, person, () -> homes.get(home).orElseThrow().version());
        var facts = Home.Facts.at("14, rue Basse", "Val-Clair", "QC", null, "CA");
        current.run(tenant, person, () -> homes.rewrite(home, facts, new FilledOn(version)));
        var refused = assertThrows(
                Refused.class,
                () -> current.run(tenant, person, () -> homes.rewrite(home, facts, new FilledOn(version))));
        assertEquals("changed-meanwhile", refused.first().code());
        assertEquals(
                1,
                current.run(tenant, person, () -> homes.find("14 rue basse", 5)).size());
    }

    @Test
    void whoever_paid_until_then_stops_on_the_day_another_begins() {
        UUID home = aHome("15, rue Basse");
        LocalDate move = LocalDate.of(2026, 7, 1);
        UUID landlord = current.run(tenant, person, () -> {
            Customer found = customers.add(Customer.Facts.of("Gestion Lune", "fr", null, null));
            parts.begin(home, found.id(), PartInHome.PAYS, move, "BC-77");
            return found.id();
        });
        current.run(tenant, person, () -> {
            assertEquals(
                    landlord,
                    parts.customers(List.of(home), PartInHome.PAYS, move).get(home));
            assertFalse(landlord.equals(parts.customers(List.of(home), PartInHome.PAYS, move.minusDays(1))
                    .get(home)));
            assertEquals(List.of(home), parts.homesOf(landlord, move));
            return 0;
        });
    }

    @Test
    void a_code_is_unreadable_in_the_table_and_every_reading_is_kept() {
        UUID home = aHome("16, rue Basse");
        current.run(tenant, person, () -> codes.add(home, "code", "garage", "4711"));
        var shown = current.run(tenant, person, () -> codes.read(home, "visite du jour"));
        assertEquals("4711", shown.getFirst().secret());
        assertFalse(shown.toString().contains("4711"));
        var readings = current.run(tenant, person, () -> codes.readings(home));
        assertEquals(1, readings.size());
        assertEquals(person, readings.getFirst().personId());
        assertEquals("visite du jour", readings.getFirst().reason());
        assertEquals(
                "access.reason",
                assertThrows(Refused.class, () -> current.run(tenant, person, () -> codes.read(home, " ")))
                        .first()
                        .code());
    }

    @Test
    void a_machine_is_replaced_and_its_name_is_free_again() {
        UUID home = aHome("17, rue Basse");
        UUID old = current.run(
                tenant,
                person,
                () -> equipment.addToHome(home, pump("Thermopompe")).id());
        var failure = assertThrows(
                Exception.class,
                () -> current.run(tenant, person, () -> equipment.addToHome(home, pump("Thermopompe"))));
        assertEquals(
                "constraint.one_unit_a_name",
                Constraints.refusal(failure).orElseThrow().code());
        var next = current.run(
                tenant,
                person,
                () -> equipment.replace(old, pump("Thermopompe"), DAY).orElseThrow());
        assertEquals(old, next.followsId().orElseThrow());
        assertEquals(
                1, current.run(tenant, person, () -> equipment.ofHome(home)).size());
        assertEquals(
                1, current.run(tenant, person, () -> equipment.takenOutOf(home)).size());
        assertEquals(
                "240",
                current.run(tenant, person, () -> equipment.ofHome(home))
                        .getFirst()
                        .nameplate()
                        .get("volts"));
    }

    @Test
    void a_home_of_another_business_is_not_found() {
        UUID home = aHome("18, rue Basse");
        UUID other = open();
        current.run(other, person, () -> {
            assertTrue(homes.get(home).isEmpty());
            assertTrue(equipment.ofHome(home).isEmpty());
            assertTrue(codes.list(home).isEmpty());
            assertTrue(hazards.of(home).isEmpty());
            return 0;
        });
        assertThrows(Exception.class, () -> current.run(other, person, () -> equipment.addToHome(home, pump("x"))));
    }
}
