package changeover.contracts.customers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.ExampleRegister;
import changeover.contracts.Examples;
import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.OwnSeason;
import changeover.contracts.calendar.Seasons;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.Fact;
import changeover.contracts.catalogue.Interval;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.OwnIntervals;
import changeover.contracts.catalogue.OwnKinds;
import changeover.contracts.catalogue.OwnTasks;
import changeover.contracts.catalogue.Task;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.NewBusiness;
import changeover.contracts.tenants.Place;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
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
class OwnCatalogueTest {

    static final LocalDate DAY = LocalDate.of(2026, 4, 1);

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    @Inject
    Customers customers;

    @Inject
    Buildings buildings;

    @Inject
    Homes homes;

    @Inject
    HomeParts parts;

    @Inject
    AllEquipment equipment;

    @Inject
    Hazards hazards;

    @Inject
    AccessCodes codes;

    @Inject
    Seasons seasons;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    OwnKinds kinds;

    @Inject
    OwnTasks tasks;

    @Inject
    OwnIntervals intervals;

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
                                "c" + id.toString().substring(0, 12),
                                "Thermo Lisière inc.",
                                "118, rue du Four-à-Chaux",
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

    private UUID enter(Examples.House house) {
        return current.run(
                tenant,
                CurrentTenant.NOBODY,
                () -> new ExampleRegister(customers, buildings, homes, parts, equipment, hazards, codes).enter(house));
    }

    @Test
    void a_plate_says_only_what_its_kind_declares() {
        UUID home = enter(Examples.homes(Examples.LISIERE, 6).getLast());
        for (Map<String, String> fits : List.of(Map.of("nonsense", "1"), Map.of("direction", "sideways"))) {
            var refused = assertThrows(
                    Refused.class,
                    () -> current.run(
                            tenant,
                            CurrentTenant.NOBODY,
                            () -> equipment.addToHome(
                                    home,
                                    new Equipment.Facts(
                                            null,
                                            "filter-slot",
                                            "Filtre",
                                            null,
                                            null,
                                            null,
                                            null,
                                            null,
                                            null,
                                            null,
                                            null,
                                            null,
                                            fits,
                                            Map.of()))));
            assertTrue(refused.first().code().startsWith("equipment.fact-"), refused.toString());
        }
    }

    @Test
    void a_new_business_has_the_seasons_of_a_cold_climate_and_moves_them() {
        current.run(tenant, CurrentTenant.NOBODY, () -> {
            assertEquals(Climate.cold(), seasons.climate());
            assertEquals(Climate.cold(), catalogue.seasons().climate());
            OwnSeason cooling = seasons.all().getFirst();
            var facts = new OwnSeason.Facts("spring", "printemps", 3, 15, 5, 31, "cooling", "ten springs of our own");
            seasons.rewrite(cooling.id(), facts, new FilledOn(cooling.version()));
            assertEquals(
                    15,
                    catalogue
                            .seasons()
                            .climate()
                            .find("cooling")
                            .orElseThrow()
                            .first()
                            .getDayOfMonth());
            assertThrows(Refused.class, () -> seasons.add("x", new OwnSeason.Facts("x", "x", 2, 30, 3, 1, null, "x")));
            return 0;
        });
    }

    @Test
    void a_kind_a_task_and_an_interval_of_ones_own_join_the_catalogue() {
        current.run(tenant, CurrentTenant.NOBODY, () -> {
            var kind = new Kind(
                    "pool-heater",
                    new Wording("Pool heater", "Chauffe-piscine"),
                    List.of(),
                    List.of(new Fact("volts", new Wording("volts", "volts"), Fact.Form.NUMBER, "V", List.of(), null)));
            UUID id = kinds.add(kind);
            Task shipped = catalogue.catalogue().tasksOf("hrv").getFirst();
            tasks.add(new Task(
                    "pool-look",
                    List.of("pool-heater"),
                    Map.of(),
                    new Wording("Look", "Regarder"),
                    shipped.who(),
                    shipped.ticket(),
                    10,
                    shipped.cadence(),
                    null,
                    List.of(),
                    List.of(),
                    null,
                    "common practice",
                    null));
            assertEquals(
                    1, catalogue.catalogue().tasksFor("pool-heater", Map.of()).size());
            assertEquals(kind, kinds.all().getFirst().body());
            assertThrows(Refused.class, () -> kinds.rewrite(id, kind, new FilledOn(7)));
            assertTrue(kinds.rewrite(id, kind, new FilledOn(0)));
            intervals.keep(new Interval(shipped.code(), null, shipped.cadence(), "label", null));
            Cadence monthly = Cadence.ofJson("{\"how\":\"every-months\",\"months\":4,\"min\":4,\"max\":4}");
            intervals.keep(new Interval(shipped.code(), null, monthly, "label on the machine", null));
            assertEquals(
                    List.of(monthly),
                    intervals.all().stream().map(Interval::cadence).toList());
            assertTrue(intervals.forget(shipped.code(), null));
            return 0;
        });
    }
}
