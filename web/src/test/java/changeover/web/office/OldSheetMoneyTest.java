package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What an old spreadsheet says of money, and what is refused. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class OldSheetMoneyTest extends OldSheetTyped {

    @Test
    void what_is_still_to_be_invoiced_is_drafted_once_and_the_rest_never() {
        var shop = shops.open("CA-ON", "en");
        LocalDate day = planOnSale(shop);
        String path = brought(
                shop,
                ("Name,Address,City,Plan,Start,Price,Paid\nIda Roe,3 Mill Lane,Port Ambrose,Two turns,"
                                + day.minusDays(40)
                                + ",249.00,100.00\nMara Quill,4 Mill Lane,Port Ambrose,Two turns," + day.minusDays(40)
                                + ",249.00,yes\n")
                        .getBytes(StandardCharsets.UTF_8));
        Map<String, String> said = form(page(shop, path));
        said.put("rest", "ask");
        post(shop.office(), path + "/reading", said).statusCode(303);
        post(shop.office(), path + "/homes", Map.of("what", "all")).statusCode(303);
        assertEquals(1L, count(shop, "invoice where subtotal_minor = 14900"));
        assertEquals(1L, count(shop, "invoice"));
        String agreement = String.valueOf(shops.in(
                shop,
                () -> rows.createNativeQuery("select cast(agreement_id as text) from invoice")
                        .getSingleResult()));
        as(shop.office())
                .get(shop.at("agreements/" + agreement))
                .then()
                .statusCode(200)
                .body(containsString("Taken over"))
                .body(containsString("paid $100.00"))
                .body(not(containsString("at our counter")));
        said.put("takeOver", day.minusDays(1).toString());
        post(shop.office(), path + "/reading", said)
                .statusCode(422)
                .body(containsString("Agreements were taken over on"));
    }

    @Test
    void what_is_owed_from_before_is_on_statements_and_in_balances_and_is_no_invoice() {
        var shop = shops.open("CA-ON", "fr");
        LocalDate day = planOnSale(shop);
        String path = brought(
                shop,
                ("Nom,Adresse,Ville,Solde,Dû depuis\nIda Roe,3 Mill Lane,Port Ambrose,\"128,50 $\"," + day.minusDays(70)
                                + "\nMara Quill,4 Mill Lane,Port Ambrose,0,\n")
                        .getBytes(StandardCharsets.UTF_8));
        post(shop.office(), path + "/reading", form(page(shop, path))).statusCode(303);
        post(shop.office(), path + "/homes", Map.of("what", "all")).statusCode(303);
        assertEquals(1L, count(shop, "opening_balance where amount_minor = 12850"));
        assertEquals(0L, count(shop, "invoice"));
        String customer = String.valueOf(shops.in(
                shop,
                () -> rows.createNativeQuery("select cast(customer_id as text) from opening_balance")
                        .getSingleResult()));
        as(shop.office())
                .get(shop.at("money/customers/" + customer))
                .then()
                .statusCode(200)
                .body(containsString("Repris d’avant"))
                .body(containsString("128,50"));
        as(shop.office()).get(shop.at("money/openings")).then().statusCode(200).body(containsString("Solde: 128,50"));
        post(
                        shop.office(),
                        shop.at("money/openings"),
                        Map.of(
                                "customer",
                                customer,
                                "amount",
                                "20",
                                "since",
                                day.plusDays(1).toString(),
                                "words",
                                "Filtre"))
                .statusCode(422);
        post(
                        shop.office(),
                        shop.at("money/openings"),
                        Map.of("customer", customer, "amount", "20", "since", day.toString(), "words", "Filtre"))
                .statusCode(303);
        assertEquals(2L, count(shop, "opening_balance"));
        post(
                        shop.office(),
                        shop.at("money/customers/" + customer + "/statements"),
                        Map.of("from", day.minusDays(90).toString(), "until", day.toString()))
                .statusCode(303);
        assertEquals(1L, count(shop, "account_statement where closing_minor = 14850"));
    }

    @Test
    void what_is_no_table_and_who_may_not_are_refused() {
        var shop = shops.open("CA-ON", "en");
        send(shop.office(), shop, new byte[0]).statusCode(422).body(containsString("Choose a file first."));
        send(shop.office(), shop, "just words".getBytes(StandardCharsets.UTF_8)).statusCode(422);
        send(shop.technician(), shop, "Name,City\na,b\n".getBytes(StandardCharsets.UTF_8))
                .statusCode(404);
        String path = brought(shop, "Name,Address,Town,Phone\na,b,c,d\n".getBytes(StandardCharsets.UTF_8));
        Map<String, String> said = form(page(shop, path));
        said.put("column-0", "");
        said.put("column-3", "city");
        said.put("region", "Vermont");
        post(shop.office(), path + "/reading", said)
                .statusCode(422)
                .body(containsString("Say which column holds the customer’s name."))
                .body(containsString("two columns cannot both say it"))
                .body(containsString("Write a province as its code"));
        as(shop.office()).get(shop.at("homes/sheets")).then().body(containsString("nothing written yet"));
        var other = shops.open("CA-ON", "en");
        as(other.office()).get(path.replace(shop.slug(), other.slug())).then().statusCode(404);
    }
}
