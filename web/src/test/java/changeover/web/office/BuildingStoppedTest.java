package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.notices.Outbox;
import changeover.billing.notices.OutboxMessage;
import changeover.contracts.PostgresForTests;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Building;
import changeover.contracts.customers.Buildings;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.customers.PartInHome;
import changeover.web.AShop;
import changeover.web.AShop.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** What serves a whole building is stopped in every home of it: told there, shown there, and printed on the paper of each. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class BuildingStoppedTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));

    @Inject
    AShop shops;

    @Inject
    Customers customers;

    @Inject
    Homes homes;

    @Inject
    HomeParts parts;

    @Inject
    Buildings buildings;

    @Inject
    AllEquipment equipment;

    @Inject
    Outbox outbox;

    private record Block(UUID first, UUID second, UUID elsewhere, UUID boiler) {}

    private Block block(Shop shop, String language) {
        return shops.in(shop, () -> {
            Building building = buildings.add(
                    new Building.Facts("Wharf House", "20 Wharf Street", "Port Ambrose", "ON", null, "CA", null));
            Customer owner = customers.add(Customer.Facts.of("Odile Marchand", language, null, "odile@example.com"));
            UUID first = home(building.id(), "Unit 1", owner, "Ines Park", language);
            UUID second = home(building.id(), "Unit 2", owner, "Bo Lindqvist", language);
            UUID elsewhere = home(null, null, owner, "Kai Brandt", language);
            Equipment boiler = equipment.addToBuilding(
                    building.id(),
                    new Equipment.Facts(
                            null,
                            "gas-furnace",
                            "Boiler",
                            null,
                            null,
                            null,
                            null,
                            null,
                            null,
                            null,
                            null,
                            null,
                            Map.of(),
                            Map.of()));
            return new Block(first, second, elsewhere, boiler.id());
        });
    }

    private UUID home(UUID building, String unit, Customer owner, String name, String language) {
        Home home = homes.add(new Home.Facts(
                building,
                unit,
                "20 Wharf Street",
                "Port Ambrose",
                "ON",
                null,
                "CA",
                null,
                null,
                "residential",
                null,
                null,
                false));
        Customer lives = customers.add(Customer.Facts.of(name, language, null, "x" + home.id() + "@example.com"));
        parts.beginAll(home.id(), owner.id(), LocalDate.of(2025, 1, 6));
        parts.begin(home.id(), lives.id(), PartInHome.LIVES, LocalDate.of(2025, 1, 6), null);
        return home.id();
    }

    @Test
    void a_buildings_boiler_is_told_and_shown_in_each_of_its_homes() throws IOException {
        for (boolean french : List.of(false, true)) {
            Shop shop = shops.open("CA-ON", french ? "fr" : "en");
            Block block = block(shop, french ? "fr" : "en");
            String neighbour = OrderPagesTest.visit(shop, block.second());
            send(
                            shop.office(),
                            shop.api("homes/" + block.second() + "/shut"),
                            Map.of("from", TODAY.toString(), "heatOff", true, "waterDrained", true))
                    .statusCode(200);
            var facts = new HashMap<String, Object>(Map.of(
                    "equipment", block.boiler().toString(),
                    "seen", "Soot behind the draught hood",
                    "language", "en",
                    "shutOff", "Its own switch"));
            String stop = send(shop.office(), shop.api("homes/" + block.first() + "/stopped"), facts)
                    .statusCode(201)
                    .extract()
                    .path("id");
            List<OutboxMessage> told = shops.in(shop, () -> outbox.about(UUID.fromString(stop)));
            assertEquals(3, told.size(), "the owner once, and who lives in each of the two homes");
            assertTrue(told.stream().allMatch(one -> one.body().contains("20 Wharf Street")));
            for (UUID home : List.of(block.first(), block.second())) {
                as(shop.office())
                        .get(shop.at("homes/" + home))
                        .then()
                        .statusCode(200)
                        .body(containsString("Soot behind the draught hood"));
            }
            as(shop.office())
                    .get(shop.at("homes/" + block.elsewhere()))
                    .then()
                    .body(not(containsString("Soot behind the draught hood")));
            as(shop.technician()).get(shop.at("field?day=" + TODAY)).then().body(containsString("Boiler"));
            as(shop.technician())
                    .get(shop.at("field/visits/" + neighbour))
                    .then()
                    .body(containsString("Soot behind the draught hood"));
            as(shop.technician())
                    .get(shop.at("field/visits/" + neighbour + "/stopped/" + stop))
                    .then()
                    .statusCode(200);
            as(shop.technician())
                    .get(shop.api("visits/" + neighbour + "/stopped"))
                    .then()
                    .body("[0].id", equalTo(stop));
            paper(shop, french);
        }
    }

    /** The office wrote the stop down, no finding did; it stands on the neighbour's paper before everything else. */
    private void paper(Shop shop, boolean french) throws IOException {
        byte[] pdf = as(shop.office())
                .get(shop.at("season/" + TODAY + "/sheets.pdf"))
                .then()
                .statusCode(200)
                .extract()
                .asByteArray();
        try (var read = Loader.loadPDF(pdf)) {
            String words = new PDFTextStripper().getText(read).replaceAll("\\s+", " ");
            String stopped = french ? "NE PAS UTILISER. Boiler" : "DO NOT USE. Boiler";
            assertTrue(words.contains(stopped), words);
            assertTrue(words.contains("Soot behind the draught hood"), words);
            String shut = french ? "eau vidangée" : "water drained";
            assertTrue(words.contains(shut), words);
            assertTrue(words.indexOf(stopped) < words.indexOf(shut), words);
        }
    }
}
