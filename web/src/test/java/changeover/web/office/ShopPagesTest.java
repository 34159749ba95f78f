package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ShopPagesTest {

    private static final Map<String, String> PAPER = Map.of(
            "street", "8 Foundry Street",
            "city", "Port Ambrose",
            "region", "ON",
            "postal", "K0X 0X0",
            "country", "CA",
            "invoiceTermsDays", "30",
            "theme", "system",
            "gstNumber", "123456789 RT0001",
            "version", "0");

    @Inject
    AShop shops;

    @Inject
    People people;

    @Test
    void the_page_speaks_the_language_of_who_reads_it() {
        var english = shops.open("CA-ON", "en");
        as(english.owner()).get(english.at("shop")).then().statusCode(200).body(containsString("On your paper"));
        var french = shops.open("CA-QC", "fr");
        as(french.owner()).get(french.at("shop")).then().statusCode(200).body(containsString("Sur vos papiers"));
    }

    @Test
    void what_is_wrong_is_said_at_its_place_and_nothing_typed_is_lost() {
        var shop = shops.open("CA-ON", "en");
        var typed = new HashMap<>(PAPER);
        typed.put("gstNumber", "12345 <b>");
        post(shop.owner(), shop.at("shop"), typed)
                .statusCode(422)
                .body(containsString("nine digits"))
                .body(containsString("12345 &lt;b&gt;"))
                .body(not(containsString("12345 <b>")));
    }

    @Test
    void the_owner_bounds_a_visit_and_takes_the_bound_away_again() {
        var shop = shops.open("CA-QC", "fr");
        var typed = new HashMap<>(PAPER);
        typed.put("visitMinutesAtMost", "20");
        post(shop.owner(), shop.at("shop"), typed).statusCode(422).body(containsString("value=\"20\""));
        typed.put("visitMinutesAtMost", "180");
        post(shop.owner(), shop.at("shop"), typed).statusCode(303);
        as(shop.owner())
                .get(shop.at("shop"))
                .then()
                .body(containsString("Minutes d’une visite, au plus"))
                .body(containsString("value=\"180\""));
        typed.put("visitMinutesAtMost", "");
        typed.put("version", "1");
        post(shop.owner(), shop.at("shop"), typed).statusCode(303);
        as(shop.owner()).get(shop.at("shop")).then().body(not(containsString("value=\"180\"")));
    }

    @Test
    void the_second_editor_is_told_of_the_first() {
        var shop = shops.open("CA-ON", "en");
        post(shop.owner(), shop.at("shop"), PAPER).statusCode(303);
        post(shop.owner(), shop.at("shop"), PAPER).statusCode(422);
    }

    @Test
    void only_the_owner_rewrites_the_paper_and_a_technician_finds_no_shop() {
        var shop = shops.open("CA-ON", "en");
        post(shop.office(), shop.at("shop"), PAPER).statusCode(404);
        as(shop.technician()).get(shop.at("shop")).then().statusCode(404);
    }

    @Test
    void a_form_from_elsewhere_is_not_taken() {
        var shop = shops.open("CA-ON", "en");
        as(shop.owner())
                .redirects()
                .follow(false)
                .formParams(PAPER)
                .post(shop.at("shop"))
                .then()
                .statusCode(400);
    }

    @Test
    void an_owner_gives_no_new_password_to_somebody_of_another_business() {
        var shop = shops.open("CA-ON", "en");
        var other = shops.open("CA-ON", "en");
        shops.in(
                shop,
                () -> people.add(
                        Membership.begin(other.technician(), "Mika Tarn", "both@example.com", "en", Role.TECHNICIAN)));
        post(shop.owner(), shop.at("shop/people/" + other.technician() + "/password"), Map.of())
                .statusCode(422)
                .body(containsString("another business"));
    }
}
