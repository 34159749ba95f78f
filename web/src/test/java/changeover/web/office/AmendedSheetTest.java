package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceEntry;
import changeover.contracts.PostgresForTests;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import changeover.scheduling.closeout.Closures;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.Stock;
import changeover.scheduling.stock.StockPlace;
import changeover.scheduling.stock.StockPlaces;
import changeover.web.ALivedInHome;
import changeover.web.AShop.Shop;
import changeover.web.field.PlannedVisit;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A reading that was mistyped, parts that were counted wrong or forgotten, and hours are put right on a closed visit. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class AmendedSheetTest extends AReviewedShop {

    @Inject
    Parts parts;

    @Inject
    Stock stock;

    @Inject
    StockPlaces places;

    @Inject
    Closures closures;

    @Inject
    EntityManager rows;

    @Test
    void a_corrected_reading_keeps_its_instrument_and_its_volts() {
        Shop shop = shops.open("CA-QC", "fr");
        String instrument = send(shop.office(), shop.api("instruments"), Map.of("name", "Thermometer", "serial", "T-7"))
                .statusCode(201)
                .extract()
                .path("id");
        String visit = PlannedVisit.visit(shop, PlannedVisit.home(shop));
        String[] asked = AnAmendmentForm.measured(shop, visit);
        String task = asked[0];
        String code = asked[1];
        send(
                        shop.technician(),
                        shop.api("visits/" + visit + "/closure"),
                        Map.of(
                                "others",
                                "done",
                                "minutes",
                                45,
                                "receivedBy",
                                "Anselm Birk",
                                "readings",
                                List.of(Map.of(
                                        "task",
                                        task,
                                        "code",
                                        code,
                                        "value",
                                        "200",
                                        "volts",
                                        "236.5",
                                        "instrument",
                                        instrument))))
                .statusCode(200);
        as(shop.office()).get(shop.at("visits/" + visit)).then().body(containsString("Thermometer, T-7"));
        String form = shop.at("visits/" + visit + "/amendment");
        Map<String, Object> typed = AnAmendmentForm.of(shop, form);
        typed.put("reading." + task + "." + code, "20");
        typed.put("why", "Une virgule de trop");
        OrderPagesTest.location(post(shop.office(), form, typed));
        as(shop.office()).get(shop.at("visits/" + visit)).then().body(containsString("Thermometer, T-7"));
        Object[] kept = shops.in(shop, () -> (Object[]) rows.createNativeQuery(
                        "select entered_value, cast(volts as text), instrument from reading where instrument_id is not null")
                .getSingleResult());
        assertEquals("20", kept[0]);
        assertEquals(0, new BigDecimal("236.5").compareTo(new BigDecimal((String) kept[1])));
        assertEquals("Thermometer, T-7", kept[2]);
    }

    @Test
    void a_part_is_counted_anew_and_a_forgotten_one_written_with_the_hours() {
        for (boolean french : List.of(false, true)) {
            Shop shop = shops.open("CA-ON", french ? "fr" : "en");
            ALivedInHome.Lived lived = priced(shop, french ? "fr" : "en");
            UUID van = stocked(shop);
            String visit = OrderPagesTest.visit(shop, lived.home());
            send(
                            shop.technician(),
                            shop.api("visits/" + visit + "/closure"),
                            Map.of(
                                    "minutes",
                                    45,
                                    "receivedBy",
                                    "Anselm Birk",
                                    "parts",
                                    List.of(Map.of("part", "CAP-45", "quantity", "2", "why", "repair"))))
                    .statusCode(200);
            assertEquals(0, held(shop, van, "CAP-45").signum());
            String form = shop.at("visits/" + visit + "/amendment");
            Map<String, Object> typed = AnAmendmentForm.of(shop, form);
            String quantity = typed.keySet().stream()
                    .filter(field -> field.startsWith("quantity."))
                    .findFirst()
                    .orElseThrow();
            assertEquals("2", typed.get(quantity));
            typed.put("why", french ? "Une seule posée" : "Only one fitted");
            typed.put(quantity, "3");
            typed.put("taken", "PAD-9");
            typed.put("used", "1");
            typed.put("place", van.toString());
            typed.put("partMachine", lived.filter().toString());
            typed.put("partWhy", "extra");
            typed.put("extra", "15");
            typed.put("extraWhy", french ? "Panneau coincé" : "The panel was stuck");
            String refused = post(shop.office(), form, typed)
                    .statusCode(422)
                    .body(
                            containsString("id=\"short-wrong\""),
                            containsString("value=\"" + lived.filter() + "\" selected"))
                    .extract()
                    .asString();
            assertEquals("3", AnAmendmentForm.value(refused, quantity));
            typed.put(quantity, "x");
            post(shop.office(), form, typed).statusCode(422).body(containsString("id=\"" + quantity + "-wrong\""));
            typed.put(quantity, "1");
            LocalTime now = LocalTime.now(ZoneId.of("America/Toronto"));
            typed.put("cameOn", TODAY.minusDays(1).toString());
            typed.put("arrived", "23:35");
            typed.put("left", "22:30");
            post(shop.office(), form, typed).statusCode(422).body(containsString("id=\"left-wrong\""));
            typed.put("arrived", "20:35");
            typed.put("left", now.isAfter(LocalTime.of(0, 10)) ? "00:05" : "21:00");
            OrderPagesTest.location(post(shop.office(), form, typed));
            assertEquals(0, held(shop, van, "CAP-45").compareTo(BigDecimal.ONE));
            assertEquals(0, held(shop, van, "PAD-9").compareTo(new BigDecimal(4)));
            JsonPath draft = as(shop.owner())
                    .get(shop.api("invoices/"
                            + as(shop.owner())
                                    .get(shop.api("invoices"))
                                    .then()
                                    .extract()
                                    .path("find { it.number == null }.id")))
                    .then()
                    .extract()
                    .jsonPath();
            assertEquals(
                    1,
                    new BigDecimal(draft.getString("lines.find { it.kind == 'part' && it.words.contains('"
                                    + (french ? "Condensateur" : "Capacitor") + "') }.quantity"))
                            .intValueExact(),
                    draft::prettify);
            assertEquals(2, reports(shop, visit).size());
            String closed = shops.in(shop, () -> {
                var closure = closures.of(UUID.fromString(visit)).orElseThrow();
                return closure.version() + " " + closure.extraMinutes() + " "
                        + closure.extraWhy().orElse("") + " "
                        + LocalTime.ofInstant(closure.arrivedAt().orElseThrow(), ZoneId.of("America/Toronto"))
                        + " "
                        + closure.leftAt()
                                .orElseThrow()
                                .isAfter(closure.arrivedAt().orElseThrow());
            });
            assertEquals("2 15 " + typed.get("extraWhy") + " 20:35 true", closed);
            as(shop.office())
                    .get(form)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Une pièce qui a été oubliée" : "A part that was forgotten"));
        }
    }

    private UUID stocked(Shop shop) {
        return shops.in(shop, () -> {
            parts.keep(new KnownPart("CAP-45", new Wording("Capacitor", "Condensateur"), "C62", null, null));
            parts.keep(new KnownPart("PAD-9", new Wording("Pad", "Tampon"), "C62", null, null));
            prices.set(new PriceEntry(ItemKind.PART, "CAP-45", Money.of("40.00", "CAD"), null, OPENED));
            prices.set(new PriceEntry(ItemKind.PART, "PAD-9", Money.of("20.00", "CAD"), null, OPENED));
            StockPlace van = places.van(shop.technician()).orElseThrow();
            stock.receive(
                    UUID.randomUUID(),
                    van.id(),
                    List.of(
                            new KnownPart.Amount("CAP-45", new BigDecimal(2)),
                            new KnownPart.Amount("PAD-9", new BigDecimal(5))),
                    null);
            return van.id();
        });
    }

    private BigDecimal held(Shop shop, UUID place, String part) {
        return shops.in(shop, () -> stock.onHand(place, part));
    }
}
