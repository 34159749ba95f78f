package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItems;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.Stock;
import changeover.scheduling.stock.StockPlaces;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.AShop.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** The owner writes who answers for how long, and closed visits are charged by it, to the cent. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class GuaranteePagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));
    private static final LocalDate OPENED = LocalDate.of(2026, 1, 5);

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    AllEquipment equipment;

    @Inject
    Parts parts;

    @Inject
    Prices prices;

    @Inject
    Stock stock;

    @Inject
    StockPlaces places;

    @Inject
    Visits visits;

    @Inject
    EntityManager rows;

    @Test
    void the_owner_writes_the_months_in_both_languages() {
        for (boolean french : List.of(false, true)) {
            Shop shop = shops.open("CA-QC", french ? "fr" : "en");
            as(shop.office())
                    .get(shop.at("shop/guarantees"))
                    .then()
                    .statusCode(200)
                    .body(
                            containsString(french ? "bon fonctionnement" : "good working order"),
                            containsString(french ? "Le propriétaire écrit" : "The owner writes"));
            post(shop.office(), shop.at("shop/guarantees/ours"), Map.of()).statusCode(404);
            post(
                            shop.owner(),
                            shop.at("shop/guarantees/ours"),
                            Map.of("work", "repair", "ourFrom", "2026-01-05", "ourMonths", "a year"))
                    .statusCode(422)
                    .body(containsString("value=\"a year\""));
            post(
                            shop.owner(),
                            shop.at("shop/guarantees/ours"),
                            Map.of("work", "repair", "ourFrom", "2026-01-05", "ourMonths", "12"))
                    .statusCode(303);
            post(
                            shop.owner(),
                            shop.at("shop/guarantees/law"),
                            Map.of(
                                    "region", "ca-qc",
                                    "kind", "outdoor-heat-pump",
                                    "lawFrom", "2026-10-05",
                                    "lawMonths", "36",
                                    "source", "the act"))
                    .statusCode(422);
            post(
                            shop.owner(),
                            shop.at("shop/guarantees/law"),
                            Map.of(
                                    "region", "ca-qc",
                                    "kind", "outdoor-heat-pump",
                                    "lawFrom", "2026-10-05",
                                    "lawMonths", "36",
                                    "source", "The act as our lawyer read it"))
                    .statusCode(303);
            as(shop.owner())
                    .get(shop.at("shop/guarantees"))
                    .then()
                    .body(containsString("The act as our lawyer read it"), containsString("Qu"));
            as(shop.office())
                    .get(shop.api("guarantees"))
                    .then()
                    .body("ours[0].months", equalTo(12))
                    .body("law[0].of", equalTo("CA-QC"));
            send(
                            shop.owner(),
                            shop.api("guarantees"),
                            Map.of(
                                    "whose",
                                    "part",
                                    "of",
                                    "no-such",
                                    "from",
                                    "2026-01-05",
                                    "months",
                                    12,
                                    "source",
                                    "Box"))
                    .statusCode(422)
                    .body("refusals.code", hasItems("stock.part-not-found"));
        }
    }

    @Test
    void a_part_that_fails_again_is_asked_of_its_maker_then_of_us_then_of_the_price() {
        Shop shop = shops.open("CA-ON", "en");
        UUID home = homes.machines(shop, "en").home();
        UUID pump = machine(shop, home, "Heat pump", null);
        UUID handler = machine(shop, home, "Air handler", "2031-06-03");
        shops.in(shop, () -> {
            parts.keep(new KnownPart("CAP-45", new Wording("Capacitor", "Condensateur"), "C62", null, null));
            prices.set(new PriceEntry(ItemKind.PART, "CAP-45", Money.of("80.00", "CAD"), null, OPENED));
            prices.set(new PriceEntry(ItemKind.LABOUR, PriceBook.HOUR, Money.of("120.00", "CAD"), null, OPENED));
            prices.set(new PriceEntry(ItemKind.TRAVEL, PriceBook.VISIT, Money.of("35.00", "CAD"), null, OPENED));
            stock.receive(
                    UUID.randomUUID(),
                    places.shelf().orElseThrow().id(),
                    List.of(new KnownPart.Amount("CAP-45", BigDecimal.TEN)),
                    null);
            return home;
        });
        String first = charged(shop, home, pump, 60);
        assertEquals("80.00 + 120.00 + 35.00", first.replaceAll(" \\[[^\\]]*]", ""));
        send(
                        shop.owner(),
                        shop.api("guarantees"),
                        Map.of("whose", "ours", "of", "repair", "from", OPENED.toString(), "months", 12))
                .statusCode(201);
        String again = charged(shop, home, pump, 60);
        assertEquals("0.00 + 0.00", again.replaceAll(" \\[[^\\]]*]", ""));
        assertEquals(true, again.contains("we fitted this part on"), again);
        String makers = charged(shop, home, handler, 60);
        assertEquals("0.00 + 120.00 + 35.00", makers.replaceAll(" \\[[^\\]]*]", ""));
        assertEquals(true, makers.contains("until 3 June 2031"), makers);
    }

    private UUID machine(Shop shop, UUID home, String name, String makerUntil) {
        return shops.in(shop, () -> {
            UUID id = equipment.ofHome(home).stream()
                    .filter(one -> one.name().equals(name))
                    .findFirst()
                    .orElseThrow()
                    .id();
            rows.createNativeQuery("update equipment set maker_warranty_until = cast(:until as date) where id = :id")
                    .setParameter("until", makerUntil)
                    .setParameter("id", id)
                    .executeUpdate();
            return id;
        });
    }

    /** A call that uses one capacitor in the machine: the part, the labour and the trip, each with its reason. */
    private String charged(Shop shop, UUID home, UUID machine, int minutes) {
        UUID visit = shops.in(
                shop,
                () -> visits.make(new NewVisit(
                                home,
                                null,
                                VisitKind.CALL,
                                Window.ofDays(TODAY, TODAY),
                                60,
                                null,
                                "No heat",
                                List.of()))
                        .id());
        String shelf =
                as(shop.office()).get(shop.api("stock")).then().extract().path("places.find { it.kind == 'shelf' }.id");
        send(
                        shop.office(),
                        shop.api("visits/" + visit + "/closure"),
                        Map.of(
                                "minutes",
                                minutes,
                                "receivedBy",
                                "Anselm Birk",
                                "parts",
                                List.of(Map.of(
                                        "part", "CAP-45",
                                        "quantity", "1",
                                        "place", shelf,
                                        "equipment", machine.toString(),
                                        "why", "repair"))))
                .statusCode(200);
        String id = as(shop.office())
                .get(shop.api("invoices?visit=" + visit))
                .then()
                .extract()
                .path("[0].id");
        var lines = as(shop.office())
                .get(shop.api("invoices/" + id))
                .then()
                .extract()
                .jsonPath();
        List<Map<String, Object>> all = lines.getList("lines");
        List<String> order = List.of("part", "labour", "travel");
        return String.join(
                " + ",
                all.stream()
                        .sorted(java.util.Comparator.comparing(line -> order.indexOf((String) line.get("kind"))))
                        .map(line -> ((Map<?, ?>) line.get("net")).get("amount") + " [" + line.get("why") + "]")
                        .toList());
    }
}
