package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Seasons;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.web.AShop;
import changeover.web.Shown;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class OwnRowsPagesTest {

    private static final Map<String, String> SPRING = Map.of(
            "nameEn", "cooling changeover",
            "nameFr", "passage à la climatisation",
            "first", "03-15",
            "last", "05-31",
            "changeover", "cooling",
            "basis", "",
            "version", "0");

    private static final Map<String, String> FILTER = Map.of(
            "task", "filter-thin",
            "serial", "",
            "often", "every-months",
            "number", "2",
            "season", "cooling",
            "basis", "dusty road",
            "source", "");

    @Inject
    AShop shops;

    @Inject
    Seasons seasons;

    @Inject
    Homes homes;

    @Inject
    AllEquipment equipment;

    private UUID cooling(AShop.Shop shop) {
        return shops.in(shop, () -> seasons.all().getFirst().id());
    }

    @Test
    void a_season_is_moved_only_with_what_its_days_rest_on() {
        var shop = shops.open("CA-ON", "en");
        String path = shop.at("shop/seasons/" + cooling(shop));
        as(shop.owner()).get(path).then().statusCode(200).body(containsString("Change cooling changeover"));
        post(shop.owner(), path, SPRING).statusCode(422).body(containsString("Say what these days rest on"));
        var moved = new HashMap<>(SPRING);
        moved.put("basis", "ten springs of our own <visits>");
        post(shop.owner(), path, moved).statusCode(303);
        String page = as(shop.office())
                .get(shop.at("shop/seasons"))
                .then()
                .statusCode(200)
                .body(containsString("ten springs of our own &lt;visits&gt;"))
                .body(containsString("15\u00a0March"))
                .body(containsString("passage à la climatisation"))
                .extract()
                .asString();
        Shown.keep("shop-seasons", page);
        post(shop.owner(), path, moved).statusCode(422).body(containsString("03-15"));
    }

    @Test
    void a_season_of_its_own_is_added_in_french_and_a_wrong_day_is_said() {
        var shop = shops.open("CA-QC", "fr");
        var own = new HashMap<>(SPRING);
        own.remove("version");
        own.putAll(Map.of("code", "sucres", "nameEn", "sugaring", "nameFr", "temps des sucres", "changeover", "none"));
        own.put("basis", "nos propres appels");
        own.put("first", "30 février");
        post(shop.owner(), shop.at("shop/seasons"), own)
                .statusCode(422)
                .body(containsString("mois-jour"))
                .body(containsString("30 février"));
        own.put("first", "03-01");
        post(shop.owner(), shop.at("shop/seasons"), own).statusCode(303);
        as(shop.owner())
                .get(shop.at("shop/seasons"))
                .then()
                .body(containsString("temps des sucres"))
                .body(containsString("comme fournie"));
    }

    @Test
    void another_businesses_season_is_not_found_and_the_office_moves_none() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        as(shop.owner()).get(shop.at("shop/seasons/" + cooling(other))).then().statusCode(404);
        post(shop.owner(), shop.at("shop/seasons/" + cooling(other)), SPRING).statusCode(404);
        post(shop.office(), shop.at("shop/seasons/" + cooling(shop)), SPRING).statusCode(404);
        as(shop.technician()).get(shop.at("shop/intervals")).then().statusCode(404);
    }

    @Test
    void an_interval_holds_for_every_machine_or_for_one_until_it_is_ended() {
        var shop = shops.open("CA-ON", "en");
        UUID machine = shops.in(shop, () -> {
            Home home = homes.add(Home.Facts.at("9 Tannery Row", "Port Ambrose", "ON", null, "CA"));
            return equipment
                    .addToHome(
                            home.id(),
                            new Equipment.Facts(
                                    null,
                                    "filter-slot",
                                    "Return filter",
                                    null,
                                    null,
                                    "FS-27",
                                    null,
                                    null,
                                    null,
                                    null,
                                    null,
                                    null,
                                    Map.of(),
                                    Map.of()))
                    .id();
        });
        String page = shop.at("shop/intervals");
        post(shop.office(), page, FILTER).statusCode(303);
        var one = new HashMap<>(FILTER);
        one.put("serial", "FS-28");
        post(shop.office(), page, one).statusCode(422).body(containsString("FS-28"));
        one.put("serial", "FS-27");
        one.put("often", "each-season");
        one.put("basis", "label on the machine");
        post(shop.office(), page, one).statusCode(303);
        String both = as(shop.office())
                .get(page)
                .then()
                .statusCode(200)
                .body(containsString("every machine"))
                .body(containsString("every 2 months"))
                .body(containsString("at each cooling changeover"))
                .body(containsString("Return filter, 9 Tannery Row"))
                .extract()
                .asString();
        Shown.keep("shop-intervals", both);
        String end = page + "/filter-thin/ending";
        post(shop.office(), end, Map.of("machine", machine.toString())).statusCode(303);
        as(shop.office()).get(page).then().body(not(containsString("Return filter, 9")));
        post(shop.office(), end, Map.of("machine", UUID.randomUUID().toString()))
                .statusCode(404);
    }

    @Test
    void a_wrong_interval_is_said_in_french_and_typed_text_stays() {
        var shop = shops.open("CA-QC", "fr");
        var wrong = new HashMap<>(FILTER);
        wrong.put("number", "chaque mois");
        wrong.put("basis", "");
        post(shop.owner(), shop.at("shop/intervals"), wrong)
                .statusCode(422)
                .body(containsString("chaque mois"))
                .body(containsString("Écrivez un nombre"));
    }
}
