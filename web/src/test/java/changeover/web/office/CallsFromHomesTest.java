package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.customers.Homes;
import changeover.scheduling.calls.CallLists;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A call is about a home: one that is found, one that is new, never one of another business. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class CallsFromHomesTest extends CallTyped {

    @Inject
    Homes all;

    @Inject
    CallLists lists;

    @Test
    void the_same_press_twice_is_one_call_and_one_home() {
        var shop = shops.open("CA-ON", "en");
        var fields = typed();
        assertEquals(take(shop, fields), take(shop, fields));
        assertEquals(1, shops.in(shop, () -> lists.waiting()).size());
        assertEquals(1L, shops.in(shop, () -> all.count()));
        assertTrue(shops.in(shop, () -> all.find("quill tannery 5550142", 5))
                .getFirst()
                .toBeRead());
    }

    @Test
    void a_home_that_is_here_is_found_by_name_telephone_or_street() {
        var shop = shops.open("CA-ON", "en");
        UUID home = homes.machines(shop, "en").home();
        for (String looked : List.of("fournier", "555-0148", "larch")) {
            var fields = typed();
            fields.put("do", "find");
            fields.put("q", looked);
            post(shop.office(), shop.at("calls"), fields)
                    .statusCode(200)
                    .body(containsString("value=\"" + home + "\""))
                    .body(containsString("The furnace clicks and stops"));
        }
        var nobody = typed();
        nobody.put("do", "find");
        post(shop.office(), shop.at("calls"), nobody).statusCode(200).body(containsString("No such home is here."));
        var here = typed();
        here.put("home", home.toString());
        here.put("street", "");
        as(shop.office()).get(take(shop, here)).then().body(containsString("14 Larch Street"));
        as(shop.office())
                .get(shop.at("homes/" + home))
                .then()
                .statusCode(200)
                .body(containsString("Mara Quill"))
                .body(containsString("calls/new?home=" + home));
        as(shop.office())
                .get(shop.at("calls/new?home=" + home))
                .then()
                .statusCode(200)
                .body(containsString("value=\"" + home + "\" checked"));
        assertEquals(1L, shops.in(shop, () -> all.count()));
    }

    @Test
    void what_nobody_here_has_is_not_found() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        String theirs = take(other, typed()).replaceFirst(".*/calls/([0-9a-f-]{36}).*", "$1");
        UUID home = homes.machines(other, "en").home();
        for (String call : List.of(theirs, UUID.randomUUID().toString())) {
            as(shop.owner()).get(shop.at("calls/" + call)).then().statusCode(404);
            post(shop.owner(), shop.at("calls/" + call + "/outcome"), Map.of("how", "nothing", "why", "x"))
                    .statusCode(404);
        }
        var fields = typed();
        fields.put("home", home.toString());
        post(shop.owner(), shop.at("calls"), fields).statusCode(404);
        as(shop.owner()).get(shop.at("calls/new?home=" + home)).then().statusCode(404);
        as(shop.technician()).get(shop.at("calls")).then().statusCode(404);
        as(shop.technician()).get(shop.at("calls/new")).then().statusCode(404);
    }
}
