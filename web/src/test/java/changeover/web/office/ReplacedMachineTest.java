package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Today;
import changeover.web.AShop;
import changeover.web.field.PlannedVisit;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A machine in another's place leaves the agreed price, and says what the next term will ask. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ReplacedMachineTest {

    @Inject
    AShop shops;

    @Inject
    Today today;

    private String replaced(AShop.Shop shop, String home, String machine, String kind, String name) {
        return post(
                        shop.office(),
                        shop.at("homes/" + home + "/machines/" + machine + "/replacing"),
                        Map.of(
                                "kind",
                                kind,
                                "name",
                                name,
                                "fits.drive",
                                "inverter",
                                "day",
                                shops.in(shop, () -> today.day()).toString()))
                .statusCode(303)
                .extract()
                .header("Location")
                .replaceFirst("^https?://[^/]*", "")
                .replaceFirst("\\?.*", "");
    }

    private static String unit(List<Map<String, Object>> units, String kind) {
        return units.stream()
                .filter(unit -> kind.equals(unit.get("kind")))
                .map(unit -> (String) unit.get("id"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void what_a_replaced_machine_changes_of_the_price_is_said() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            LocalDate day = shops.in(shop, () -> today.day());
            String home = PlannedVisit.home(shop);
            var facts = new HashMap<String, Object>(Map.of(
                    "code", "two",
                    "nameEn", "Two turns",
                    "nameFr", "Deux saisons",
                    "visits", 2,
                    "price", "249.00",
                    "onSaleFrom", day.toString()));
            facts.put("tasks", List.of(Map.of("task", "filter-direction")));
            facts.put("extras", List.of(Map.of("kind", "outdoor-heat-pump", "included", 1, "price", "40.00")));
            String plan = send(shop.owner(), shop.api("plans"), facts)
                    .statusCode(201)
                    .extract()
                    .path("id");
            String agreement = send(
                            shop.owner(),
                            shop.api("agreements"),
                            Map.of("home", home, "plan", plan, "from", day.toString()))
                    .statusCode(201)
                    .extract()
                    .path("id");
            send(
                            shop.owner(),
                            shop.api("agreements/" + agreement + "/acceptance"),
                            Map.of("by", "Anselm Birk", "channel", "counter"))
                    .statusCode(200);
            List<Map<String, Object>> units = as(shop.owner())
                    .get(shop.api("homes/" + home))
                    .then()
                    .extract()
                    .path("units");
            String drain = unit(units, "condensate");
            String pump = unit(units, "outdoor-heat-pump");
            String second = replaced(shop, home, drain, "outdoor-heat-pump", "The second pump");
            as(shop.office())
                    .get(second)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Deux saisons coûte 40,00" : "Two turns costs"))
                    .body(containsString(french ? "de plus par an" : "more a year"));
            as(shop.office())
                    .get(replaced(shop, home, pump, "outdoor-heat-pump", "The newer pump"))
                    .then()
                    .statusCode(200)
                    .body(containsString(
                            french ? "Le prix de Deux saisons ne change pas" : "Two turns stays as it is"));
            as(shop.office())
                    .get(replaced(
                            shop, home, second.substring(second.lastIndexOf('/') + 1), "condensate", "The newer drain"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Deux saisons coûte 40,00" : "Two turns costs"))
                    .body(containsString(french ? "de moins par an" : "less a year"));
        }
    }
}
