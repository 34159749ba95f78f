package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import changeover.web.Shown;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class MachinePagesTest {

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    AllEquipment equipment;

    @Test
    void the_form_is_made_from_the_data_of_the_kind_in_both_languages() {
        for (String language : new String[] {"en", "fr"}) {
            var shop = shops.open("CA-ON", language);
            var lived = homes.machines(shop, language);
            String machines = shop.at("homes/" + lived.home() + "/machines/");
            as(shop.office())
                    .header("Accept-Language", language)
                    .get(machines + "new")
                    .then()
                    .statusCode(200)
                    .body(containsString(language.equals("fr") ? "Humidificateur à vapeur" : "Steam humidifier"));
            String form = as(shop.office())
                    .header("Accept-Language", language)
                    .get(machines + "new?kind=filter-slot")
                    .then()
                    .statusCode(200)
                    .body(containsString("fits.direction"))
                    .body(containsString("fits.size"))
                    .extract()
                    .asString();
            Shown.keep("machineform-" + language, form);
            String page = as(shop.office())
                    .header("Accept-Language", language)
                    .get(machines + lived.filter())
                    .then()
                    .statusCode(200)
                    .extract()
                    .asString();
            Shown.keep("machine-" + language, page);
        }
    }

    @Test
    void a_machine_is_added_and_what_its_plate_cannot_say_is_refused_with_what_was_typed() {
        var shop = shops.open("CA-ON", "en");
        var lived = homes.machines(shop, "en");
        String machines = shop.at("homes/" + lived.home() + "/machines");
        post(shop.office(), machines, Map.of("kind", "humidifier-steam", "name", "Steam <b>", "plate.volts", "many"))
                .statusCode(422)
                .body(containsString("Write a number."))
                .body(containsString("Steam &lt;b&gt;"))
                .body(not(containsString("Steam <b>")));
        post(
                        shop.office(),
                        machines,
                        Map.of("kind", "humidifier-steam", "name", "Steam", "plate.volts", "240", "plate.amps", "11,5"))
                .statusCode(303);
        List<Equipment> kept = shops.in(shop, () -> equipment.ofHome(lived.home()));
        assertEquals("11.5", kept.getLast().nameplate().get("amps"));
        post(shop.office(), machines, Map.of("kind", "no-such-kind", "name", "x"))
                .statusCode(404);
    }

    @Test
    void a_label_outranks_the_catalogue_until_it_is_forgotten() {
        var shop = shops.open("CA-ON", "en");
        var lived = homes.machines(shop, "en");
        String machine = shop.at("homes/" + lived.home() + "/machines/" + lived.filter());
        Equipment filter = shops.in(shop, () -> equipment.get(lived.filter()).orElseThrow());
        String code = Catalogue.shipped()
                .tasksFor(filter.kind(), filter.fits())
                .getFirst()
                .code();
        post(shop.office(), machine + "/intervals/" + code, Map.of("months", "9", "basis", ""))
                .statusCode(422)
                .body(containsString("16x25"));
        post(shop.office(), machine + "/intervals/" + code, Map.of("months", "9", "basis", "label on the frame"))
                .statusCode(303);
        as(shop.office()).get(machine).then().body(containsString("label on the frame"));
        post(shop.office(), machine + "/intervals/" + code, Map.of("forget", "yes"))
                .statusCode(303);
        as(shop.office()).get(machine).then().body(not(containsString("label on the frame")));
    }

    @Test
    void a_machine_is_changed_taken_out_and_followed() {
        var shop = shops.open("CA-ON", "en");
        var lived = homes.machines(shop, "en");
        String machine = shop.at("homes/" + lived.home() + "/machines/" + lived.filter());
        var facts = Map.of("version", "0", "name", "Filter, hall", "fits.size", "20x20", "fits.direction", "up");
        post(shop.office(), machine, facts).statusCode(303);
        post(shop.office(), machine, facts).statusCode(422);
        as(shop.office()).get(machine + "/ending").then().statusCode(200).body(containsString("Filter, hall"));
        as(shop.office()).get(machine + "/replacing").then().statusCode(200);
        as(shop.office()).get(machine + "/replacing?kind=filter-slot").then().statusCode(200);
        post(
                        shop.office(),
                        machine + "/replacing",
                        Map.of("kind", "filter-slot", "name", "Filter, new", "day", "2026-11-02"))
                .statusCode(303);
        post(shop.office(), machine + "/ending", Map.of("day", "2026-11-03")).statusCode(422);
        as(shop.office())
                .get(shop.at("homes/" + lived.home()))
                .then()
                .body(containsString("Filter, new"))
                .body(containsString("taken out"));
        var other = shops.open("CA-ON", "en");
        String foreign = other.at("homes/" + lived.home() + "/machines/" + lived.filter());
        for (String path : new String[] {"", "/ending", "/replacing"}) {
            as(other.office()).get(foreign + path).then().statusCode(404);
        }
        post(other.office(), foreign + "/ending", Map.of("day", "2026-11-03")).statusCode(404);
    }

    /** Its work falls at once, so it may not be taken out today for a day to come. */
    @Test
    void a_machine_is_taken_out_on_its_day_and_not_before() {
        for (String language : new String[] {"en", "fr"}) {
            var shop = shops.open("CA-ON", language);
            var lived = homes.machines(shop, language);
            String ending = shop.at("homes/" + lived.home() + "/machines/" + lived.filter() + "/ending");
            post(shop.office(), ending, Map.of("day", "2099-01-01"))
                    .statusCode(422)
                    .body(containsString(language.equals("fr") ? "le jour où il part" : "on the day it goes"))
                    .body(containsString("2099-01-01"));
            assertEquals(
                    true,
                    shops.in(
                            shop,
                            () -> equipment.ofHome(lived.home()).stream()
                                    .anyMatch(one -> one.id().equals(lived.filter()))));
        }
    }
}
