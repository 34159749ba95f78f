package changeover.web.api;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;

import changeover.billing.invoices.Drafts;
import changeover.billing.invoices.SomeDrafts;
import changeover.billing.runs.RunWork;
import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A billing run from the look before to the list after, over the API and on the office's pages. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class BillingRunsApiTest {

    @Inject
    AShop shops;

    @Inject
    Drafts drafts;

    @Inject
    RunWork work;

    @Inject
    AgroalDataSource rows;

    /** So many drafts of Ida Roe's home in Quebec, and one in a place whose tax nobody knows. */
    private void drafts(AShop.Shop shop, int count) {
        shops.in(shop, () -> {
            UUID customer = UUID.randomUUID();
            UUID home = UUID.randomUUID();
            UUID elsewhere = UUID.randomUUID();
            try (Connection connection = rows.getConnection();
                    Statement statement = connection.createStatement()) {
                statement.execute("insert into customer (id, key, name, language) values ('" + customer
                        + "', 'ida', 'Ida Roe', 'fr')");
                for (Map.Entry<UUID, String> place :
                        Map.of(home, "QC", elsewhere, "XX").entrySet()) {
                    statement.execute("insert into home (id, key, street, city, region, country) values ('"
                            + place.getKey() + "', '" + place.getValue() + "', '1, rue du Quai', 'Port-Ambroise', '"
                            + place.getValue() + "', 'CA')");
                }
            }
            List<changeover.billing.invoices.Draft> all = new ArrayList<>();
            for (int at = 0; at < count; at++) {
                all.add(SomeDrafts.plan(customer, home, "100.00"));
            }
            all.add(SomeDrafts.plan(customer, elsewhere, "100.00"));
            return drafts.write(all);
        });
    }

    @Test
    void a_run_over_the_api() {
        var shop = shops.open("CA-QC", "fr");
        drafts(shop, 120);
        as(shop.office())
                .get(shop.api("billing-runs/preview"))
                .then()
                .statusCode(200)
                .body("drafts", equalTo(120))
                .body("totals[0].amount", equalTo("13797.60"))
                .body("refused[0].code", equalTo("tax.place-unknown"))
                .body("withoutMail.size()", equalTo(120))
                .body("kinds[0].kind", equalTo("plan"))
                .body("kinds[0].totals[0].amount", equalTo("13797.60"))
                .body("documents.size()", equalTo(100))
                .body("documents[0].amount.amount", equalTo("114.98"))
                .body("odd.size()", equalTo(0))
                .body("nothingToCharge", equalTo(0));
        as(shop.office()).get(shop.api("billing-runs/preview?skip=100")).then().body("documents.size()", equalTo(20));
        String operation = UUID.randomUUID().toString();
        String id = start(shop, operation);
        org.junit.jupiter.api.Assertions.assertEquals(id, start(shop, operation), "the same operation, the same run");
        send(shop.office(), shop.api("billing-runs"), Map.of())
                .statusCode(422)
                .contentType("application/problem+json")
                .body("refusal", containsString("en cours"));
        work.goOn();
        as(shop.office())
                .get(shop.api("billing-runs/" + id))
                .then()
                .statusCode(200)
                .body("run.state", equalTo("done"))
                .body("run.issued", equalTo(120))
                .body("run.refused", equalTo(1))
                .body("run.papersToMake", equalTo(0))
                .body("left[0].refusal", containsString("CA-XX"));
        send(shop.office(), shop.api("billing-runs/" + id + "/halt"), Map.of()).statusCode(422);
        as(shop.office()).get(shop.api("billing-runs")).then().body("size()", equalTo(1));
    }

    private static String start(AShop.Shop shop, String operation) {
        return as(shop.office())
                .header("Operation-Id", operation)
                .contentType(ContentType.JSON)
                .body("{}")
                .post(shop.api("billing-runs"))
                .then()
                .statusCode(201)
                .header("Location", containsString("/billing-runs/"))
                .body("state", equalTo("running"))
                .extract()
                .path("id");
    }

    @Test
    void what_is_not_theirs_is_not_found_and_what_is_not_understood_is_said() {
        var shop = shops.open("CA-QC", "en");
        var other = shops.open("CA-QC", "en");
        drafts(other, 1);
        String foreign = start(other, UUID.randomUUID().toString());
        for (String id : List.of(foreign, UUID.randomUUID().toString())) {
            as(shop.office()).get(shop.api("billing-runs/" + id)).then().statusCode(404);
            as(shop.office()).get(shop.at("money/runs/" + id)).then().statusCode(404);
            post(shop.office(), shop.at("money/runs/" + id + "/halt"), Map.of()).statusCode(404);
            send(shop.office(), shop.api("billing-runs/" + id + "/halt"), Map.of("x", 1))
                    .statusCode(404);
        }
        for (Object bad :
                List.of(Map.of("day", "soon"), Map.of("days", "2026-04-01"), Map.of("day", "2199-01-01"), Map.of())) {
            send(shop.office(), shop.api("billing-runs"), bad).statusCode(422);
        }
        as(shop.technician()).get(shop.at("money/runs")).then().statusCode(not(200));
        as(shop.office()).get(shop.api("billing-runs/preview?day=soon")).then().statusCode(422);
        as(shop.office())
                .get(shop.at("money/runs?day=soon"))
                .then()
                .statusCode(422)
                .body(containsString("value=\"soon\""));
        post(shop.office(), shop.at("money/runs"), Map.of("day", "2199-01-01"))
                .statusCode(422)
                .body(containsString("never dated ahead"))
                .body(containsString("2199-01-01"));
    }

    @Test
    void a_run_on_the_pages_in_both_languages() {
        for (String language : List.of("fr", "en")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            drafts(shop, 150);
            as(shop.office()).get(shop.at("money")).then().body(containsString(shop.at("money/runs")));
            as(shop.office())
                    .get(shop.at("money/runs"))
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "150 brouillons seraient émis" : "150 drafts would be issued"))
                    .body(containsString(french ? "17\u00a0247,00\u00a0$" : "$17,247.00"))
                    .body(containsString(french ? "Formules et leurs versements" : "Plans and their instalments"))
                    .body(containsString(french ? "De 1 à 100 sur 150" : "1 to 100 of 150"))
                    .body(containsString(french ? "Formule Confort" : "Plan Comfort"))
                    .body(containsString(french ? "Aucune taxe" : "No tax is known"));
            as(shop.office())
                    .get(shop.at("money/runs?of=visit"))
                    .then()
                    .statusCode(200)
                    .body(containsString("id=\"documents\""));
            as(shop.office()).get(shop.at("money/runs?of=else")).then().statusCode(404);
            String page = post(shop.office(), shop.at("money/runs"), Map.of("day", "2026-04-01"))
                    .statusCode(303)
                    .extract()
                    .header("Location");
            as(shop.office())
                    .get(page)
                    .then()
                    .statusCode(200)
                    .body(containsString("hx-trigger"))
                    .body(containsString(french ? "0 brouillons sur 151" : "0 of 151 drafts"));
            work.nextBatch(shop.tenant());
            as(shop.office()).get(page).then().body(containsString(french ? "F-2026-0016" : "INV-2026-0016"));
            work.goOn();
            as(shop.office())
                    .get(page)
                    .then()
                    .statusCode(200)
                    .body(not(containsString("hx-trigger")))
                    .body(containsString(french ? "terminée" : "done"))
                    .body(containsString("Ida Roe"))
                    .body(containsString(french ? "Aucune taxe" : "No tax is known"));
            as(shop.office()).get(shop.at("money/runs")).then().body(containsString("Basil Fenn"));
        }
    }
}
