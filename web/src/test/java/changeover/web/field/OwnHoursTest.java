package changeover.web.field;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Today;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** One visit of fifty-five minutes was closed today. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class OwnHoursTest {

    @Inject
    AShop shops;

    @Inject
    Today today;

    private void closed(AShop.Shop shop) {
        String visit = PlannedVisit.visit(shop, PlannedVisit.home(shop));
        send(
                        shop.owner(),
                        shop.api("visits/" + visit + "/closure"),
                        Map.of("others", "done", "minutes", 55, "receivedBy", "Anselm Birk"))
                .statusCode(200);
    }

    @Test
    void whoever_worked_a_week_corrects_and_signs_it_and_the_office_takes_the_table() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            closed(shop);
            LocalDate day = shops.in(shop, () -> today.day());
            String path = shop.at("field/hours");
            as(shop.technician())
                    .get(path)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "0,92" : "0.92"))
                    .body(containsString(french ? "Pas encore signée" : "Not signed yet"));
            post(shop.technician(), path + "/signature", Map.of("week", day.toString(), "minutes", "54"))
                    .statusCode(422);
            post(shop.technician(), path + "/signature", Map.of("week", day.toString(), "minutes", "55"))
                    .statusCode(303);
            as(shop.office())
                    .get(shop.at("shop/hours"))
                    .then()
                    .statusCode(200)
                    .body(containsString("Mika Tarn"))
                    .body(containsString(french ? "Signée" : "Signed"));
            post(
                            shop.technician(),
                            path + "/correction",
                            Map.of("day", day.toString(), "hours", french ? "7,5" : "7.5", "why", ""))
                    .statusCode(422);
            post(
                            shop.technician(),
                            path + "/correction",
                            Map.of("day", day.toString(), "hours", french ? "7,5" : "7.5", "why", "Fetched the parts"))
                    .statusCode(303);
            post(
                            shop.technician(),
                            path + "/correction",
                            Map.of("day", day.plusDays(1).toString(), "hours", "1", "why", "Tomorrow"))
                    .statusCode(422);
            as(shop.technician())
                    .get(path)
                    .then()
                    .body(containsString(french ? "Signée avant d’être corrigée" : "Signed before it was corrected"));
            String table = as(shop.office())
                    .get(shop.at("shop/hours/week.csv"))
                    .then()
                    .statusCode(200)
                    .extract()
                    .asString();
            assertTrue(table.contains(",450,7.50,yes,Fetched the parts,no"), table);
            as(shop.technician()).get(shop.at("shop/hours")).then().statusCode(404);
        }
    }

    @Test
    void over_the_api_a_technician_reads_and_signs_their_own_week_alone() {
        var shop = shops.open("CA-ON", "en");
        closed(shop);
        LocalDate day = shops.in(shop, () -> today.day());
        as(shop.technician())
                .get(shop.api("hours"))
                .then()
                .statusCode(200)
                .body("size()", equalTo(1))
                .body("[0].minutes", equalTo(55))
                .body("[0].signed", equalTo(false));
        send(
                        shop.technician(),
                        shop.api("hours/corrections"),
                        Map.of("day", day.toString(), "minutes", 60, "why", "The ferry"))
                .statusCode(200)
                .body("minutes", equalTo(60));
        send(shop.technician(), shop.api("hours/signatures"), Map.of("week", day.toString(), "minutes", 60))
                .statusCode(200)
                .body("signed", equalTo(true));
        as(shop.technician()).get(shop.api("hours.csv")).then().statusCode(404);
        as(shop.office())
                .get(shop.api("hours.csv?week=" + day))
                .then()
                .statusCode(200)
                .body(containsString("The ferry"));
    }
}
