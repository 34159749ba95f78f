package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.hasItem;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Today;
import changeover.web.APartner;
import changeover.web.AShop;
import changeover.web.field.PlannedVisit;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Whatever a visit's page with a partner refuses it says, and a partner we no longer work with leads to no page. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class PartnerRefusedTest {

    @Inject
    AShop shops;

    @Inject
    Today today;

    @Test
    void what_is_refused_is_said_whoever_has_the_visit_by_now() {
        for (boolean french : List.of(false, true)) {
            var shop = shops.open("CA-QC", french ? "fr" : "en");
            LocalDate day = shops.in(shop, () -> today.day());
            String page = shop.at("visits/" + PlannedVisit.visit(shop, PlannedVisit.home(shop)) + "/partner");
            String partner = APartner.gas(shop, "Brandt Gas", day);
            post(shop.office(), page + "/return", Map.of("why", "They are ill"))
                    .statusCode(422)
                    .body(containsString(french ? "Aucun partenaire n’a cette visite" : "No partner has this visit"));
            var deal = Map.of("partner", partner, "day", day.toString(), "price", french ? "220,00" : "220.00");
            post(shop.office(), page, deal).statusCode(303);
            post(shop.office(), page, deal)
                    .statusCode(422)
                    .body(containsString(french ? "en d’autres mains" : "in other hands"));
            post(shop.office(), page + "/return", Map.of("why", ""))
                    .statusCode(422)
                    .body(containsString("why-wrong"))
                    .body(containsString("value=\"" + day + "\""))
                    .body(containsString("value=\"0\""));
            var close = Map.of(
                    "made",
                    UUID.randomUUID().toString(),
                    "day",
                    day.toString(),
                    "minutes",
                    "55",
                    "receivedBy",
                    "Anselm Birk");
            post(shop.office(), page + "/closure", close).statusCode(303);
            post(shop.office(), page + "/return", Map.of("why", "Too late"))
                    .statusCode(422)
                    .body(containsString(french ? "Cette visite est terminée" : "This visit has ended"));
            String made = shop.at("money/plans/minutes?from=" + day + "&until=" + day + "&by=technician");
            String link = shop.at("shop/partners/" + partner);
            as(shop.owner()).get(made).then().statusCode(200).body(containsString(link));
            as(shop.office()).get(link).then().statusCode(200);
            post(shop.office(), link + "/end", Map.of()).statusCode(303);
            as(shop.owner())
                    .get(made)
                    .then()
                    .statusCode(200)
                    .body(containsString("Brandt Gas"))
                    .body(not(containsString(link)));
            send(shop.office(), shop.api("partners"), Map.of("name", "Brandt Gas", "trade", "gas", "phone", "555-0177"))
                    .statusCode(201)
                    .body("id", not(equalTo(partner)), "papers.size()", equalTo(0));
            send(shop.office(), shop.api("partners"), Map.of("name", "Brandt Gas", "trade", "gas"))
                    .statusCode(422)
                    .body("refusals.code", hasItem("constraint.a_partner_is_known_once"));
        }
    }
}
