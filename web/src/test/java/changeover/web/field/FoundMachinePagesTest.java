package changeover.web.field;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.hasItem;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import changeover.web.Shown;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** At a home that was sold unread the technician writes its machines down, and the year follows. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class FoundMachinePagesTest {

    private static final Pattern BACK = Pattern.compile("name=\"back\" value=\"([0-9a-f-]{36})\"");

    @Inject
    AShop shops;

    @Test
    void machines_are_written_down_and_the_year_is_laid_out_for_them_in_french() {
        walk("fr", "Appareils trouvés", "la maison reste à relever", "Aucun appareil n’est encore noté");
    }

    @Test
    void machines_are_written_down_and_the_year_is_laid_out_for_them_in_english() {
        walk("en", "Equipment found", "the home stays to be read", "No machine is written down here yet");
    }

    private void walk(String language, String heading, String stays, String none) {
        AShop.Shop shop = shops.open("CA-QC", language);
        String home = PlannedVisit.unread(shop);
        String visit = PlannedVisit.visit(shop, home);
        String at = "field/visits/" + visit;
        as(shop.owner())
                .get(shop.api("homes/" + home + "/year"))
                .then()
                .body("visits.tasks.flatten().task", hasItem("visit-look-over"));
        assertTrue(page(shop, at, language + "-unread").contains(none));
        assertTrue(page(shop, at + "/closure", language + "-closure-unread").contains(stays));
        assertTrue(page(shop, at + "/machines", language + "-machines").contains(heading));
        String form = page(shop, at + "/machines?kind=filter-slot", language + "-machine-form");
        assertTrue(form.contains("name=\"fits.size\""), form);
        as(shop.technician()).get(shop.at(at + "/machines?kind=kiln")).then().statusCode(404);

        Map<String, String> wrong = typed("filter-slot", "");
        wrong.put("make", "<b>Borealis</b>");
        wrong.put("installedOn", "soon");
        post(shop.technician(), shop.at(at + "/machines"), wrong)
                .statusCode(422)
                .body(containsString("id=\"name-wrong\""))
                .body(containsString("id=\"installedOn-wrong\""))
                .body(containsString("&lt;b&gt;Borealis"));

        Map<String, String> filter = typed("filter-slot", "Filter");
        filter.put("fits.size", "16x25x4");
        post(shop.technician(), shop.at(at + "/machines"), filter).statusCode(303);
        post(shop.technician(), shop.at(at + "/machines"), filter).statusCode(303);
        post(shop.technician(), shop.at(at + "/machines"), typed("condensate", "Filter"))
                .statusCode(422)
                .body(containsString("id=\"name-wrong\""));
        post(shop.technician(), shop.at(at + "/machines"), typed("condensate", "Wrong"))
                .statusCode(303);
        post(shop.technician(), shop.at(at + "/machines"), typed("outdoor-heat-pump", "Outdoor unit"))
                .statusCode(303);
        String written = page(shop, at + "/machines", language + "-machines-written");
        List<String> back =
                BACK.matcher(written).results().map(one -> one.group(1)).toList();
        assertEquals(3, back.size());
        Map<String, String> mistake = new HashMap<>();
        mistake.put("made", UUID.randomUUID().toString());
        mistake.put("back", back.get(1));
        post(shop.technician(), shop.at(at + "/machines/back"), mistake).statusCode(303);
        as(shop.technician())
                .get(shop.at(at + "/machines"))
                .then()
                .body(not(containsString("Wrong")), containsString("Outdoor unit"));

        close(shop, at);
        as(shop.owner()).get(shop.api("homes/" + home)).then().body("toBeRead", org.hamcrest.CoreMatchers.is(false));
        String year = as(shop.owner())
                .get(shop.api("homes/" + home + "/year"))
                .then()
                .extract()
                .asString();
        assertTrue(year.contains("Outdoor unit") && year.contains("Filter"), year);
        assertTrue(!year.contains("Wrong"), year);
        post(shop.technician(), shop.at(at + "/machines"), typed("condensate", "Drain"))
                .statusCode(422);
    }

    private void close(AShop.Shop shop, String at) {
        Map<String, String> closing = new HashMap<>();
        closing.put("made", UUID.randomUUID().toString());
        closing.put("rest", "yes");
        closing.put("minutes", "40");
        closing.put("by", "Anselm Birk");
        post(shop.technician(), shop.at(at + "/closure"), closing).statusCode(303);
    }

    private static Map<String, String> typed(String kind, String name) {
        Map<String, String> typed = new HashMap<>();
        typed.put("made", UUID.randomUUID().toString());
        typed.put("kind", kind);
        typed.put("name", name);
        return typed;
    }

    private static String page(AShop.Shop shop, String path, String name) {
        String html = as(shop.technician())
                .get(shop.at(path))
                .then()
                .statusCode(200)
                .extract()
                .asString();
        Shown.keep("field-" + name, html);
        return html;
    }
}
