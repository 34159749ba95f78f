package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Days;
import changeover.web.AShop;
import io.agroal.api.AgroalDataSource;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A form that is pressed twice, or sent again from the page before, is done once. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class SentTwiceTest {

    private static final LocalDate DAY = LocalDate.now(ZoneId.of("America/Toronto"));
    private static final Pattern ONCE = Pattern.compile("name=\"once\" value=\"([^\"]+)\"");
    private static final String TOKEN = "AAAAAAAAAAAAAAAAAAAAAA";

    @Inject
    ABilledShop billed;

    @Inject
    AShop shops;

    @Inject
    Days days;

    @Inject
    AgroalDataSource rows;

    private static String payer(AShop.Shop shop) {
        return as(shop.owner()).get(shop.api("invoices")).then().extract().path("[0].customer");
    }

    private static int payments(AShop.Shop shop, String customer) {
        return as(shop.owner())
                .get(shop.api("payments?customer=" + customer))
                .then()
                .statusCode(200)
                .extract()
                .<List<?>>path("$")
                .size();
    }

    /** The id of the last form on a page: what stands around the page comes first. */
    private static String once(String page) {
        Matcher found = ONCE.matcher(page);
        String last = "";
        while (found.find()) {
            last = found.group(1);
        }
        assertTrue(!last.isEmpty(), page);
        return last;
    }

    private static String drawn(AShop.Shop shop, String customer) {
        return once(as(shop.office())
                .get(shop.at("money/payments/new?customer=" + customer))
                .then()
                .statusCode(200)
                .extract()
                .asString());
    }

    private static Map<String, String> form(String once, String amount) {
        return new HashMap<>(Map.of("once", once, "day", DAY.toString(), "amount", amount, "way", "cheque"));
    }

    @Test
    void many_presses_at_once_are_one_payment_and_lead_to_one_place() throws Exception {
        var shop = billed.open("CA-ON", "en");
        String customer = payer(shop);
        int before = payments(shop, customer);
        String path = shop.at("money/customers/" + customer + "/payments");
        Map<String, String> form = form(drawn(shop, customer), "11.00");
        Callable<String> press =
                () -> post(shop.office(), path, form).statusCode(303).extract().header("Location");
        Set<String> places = new HashSet<>();
        try (var hands = Executors.newFixedThreadPool(6)) {
            for (Future<String> one : hands.invokeAll(Collections.nCopies(6, press))) {
                places.add(one.get());
            }
        }
        places.add(press.call());
        assertEquals(1, places.size(), places.toString());
        assertEquals(before + 1, payments(shop, customer));
    }

    @Test
    void two_drawings_are_two_deeds_and_so_is_the_form_of_somebody_else() {
        var shop = billed.open("CA-ON", "en");
        var other = billed.open("CA-ON", "en");
        String customer = payer(shop);
        String theirs = payer(other);
        int before = payments(shop, customer);
        int beforeThere = payments(other, theirs);
        String path = shop.at("money/customers/" + customer + "/payments");
        String once = drawn(shop, customer);
        assertNotEquals(once, drawn(shop, customer));
        post(shop.office(), path, form(once, "11.00")).statusCode(303);
        post(shop.office(), path, form(drawn(shop, customer), "11.00")).statusCode(303);
        post(shop.owner(), path, form(once, "11.00")).statusCode(303);
        assertEquals(before + 3, payments(shop, customer));
        post(other.office(), other.at("money/customers/" + theirs + "/payments"), form(once, "11.00"))
                .statusCode(303);
        assertEquals(beforeThere + 1, payments(other, theirs));
        post(shop.office(), path, form("no id of ours", "11.00")).statusCode(303);
        assertEquals(before + 4, payments(shop, customer));
    }

    @Test
    void a_refused_form_is_mended_and_sent_again_also_from_the_page_before() {
        var shop = billed.open("CA-ON", "en");
        String customer = payer(shop);
        int before = payments(shop, customer);
        String path = shop.at("money/customers/" + customer + "/payments");
        String once = drawn(shop, customer);
        String again = post(shop.office(), path, form(once, "much"))
                .statusCode(422)
                .extract()
                .asString();
        post(shop.office(), path, form(once(again), "12.00")).statusCode(303);
        post(shop.office(), path, form(once, "13.00")).statusCode(303);
        assertEquals(before + 2, payments(shop, customer));
    }

    @Test
    void what_was_written_otherwise_since_is_asked_before_it_is_done_as_well() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-ON", french ? "fr" : "en");
            String customer = payer(shop);
            int before = payments(shop, customer);
            String path = shop.at("money/customers/" + customer + "/payments");
            String once = drawn(shop, customer);
            post(shop.office(), path, form(once, "11.00")).statusCode(303);
            String again = post(shop.office(), path, form(once, "14.00"))
                    .statusCode(422)
                    .body(containsString("value=\"14.00\""))
                    .body(containsString(french ? "déjà été envoyé, rempli autrement" : "filled in otherwise"))
                    .extract()
                    .asString();
            assertEquals(before + 1, payments(shop, customer));
            post(shop.office(), path, form(once(again), "14.00")).statusCode(303);
            assertEquals(before + 2, payments(shop, customer));
        }
    }

    @Test
    void a_link_is_made_and_shown_once() {
        for (boolean french : new boolean[] {false, true}) {
            var shop = billed.open("CA-ON", french ? "fr" : "en");
            String path = shop.at("customers/" + payer(shop) + "/link");
            String page = as(shop.office()).get(path).then().extract().asString();
            Map<String, String> form = Map.of("once", once(page));
            post(shop.office(), path, form).statusCode(200).body(containsString("/yours/"));
            post(shop.office(), path, form)
                    .statusCode(200)
                    .body(not(containsString("/yours/")))
                    .body(containsString(french ? "une fois seulement" : "was done once"));
            String links = as(shop.office()).get(path).then().extract().asString();
            assertEquals(2, links.split("<ul class=\"plain\">|</ul>", -1)[1].split("<li>", -1).length, links);
        }
    }

    private static ValidatableResponse bring(AShop.Shop shop, String once, String what, String file) {
        return as(shop.owner())
                .redirects()
                .follow(false)
                .cookie("csrf-token", TOKEN)
                .multiPart("csrf", TOKEN)
                .multiPart("once", once)
                .multiPart("what", what)
                .multiPart("file", "homes.csv", file.getBytes(StandardCharsets.UTF_8), "text/csv")
                .post(shop.at("homes/file"))
                .then();
    }

    @Test
    void a_file_is_looked_at_as_often_as_one_likes_and_comes_in_once() {
        var shop = billed.open("CA-ON", "en");
        String page =
                as(shop.owner()).get(shop.at("homes/file")).then().extract().asString();
        Matcher first = ONCE.matcher(page.substring(page.indexOf("action=\"" + shop.at("homes/file") + "\"")));
        assertTrue(first.find(), page);
        String once = first.group(1);
        String file = as(shop.owner())
                .get(shop.at("homes/file/homes.csv"))
                .then()
                .extract()
                .asString();
        String told = "was done once";
        bring(shop, once, "look", file).statusCode(200).body(not(containsString(told)));
        bring(shop, once, "look", file).statusCode(200).body(not(containsString(told)));
        bring(shop, once, "good", file).statusCode(200).body(not(containsString(told)));
        bring(shop, once, "good", file).statusCode(200).body(containsString(told));
        bring(shop, once, "good", file + "\n").statusCode(422);
    }

    @Test
    void forms_of_long_ago_are_forgotten_as_days_pass() throws Exception {
        var shop = shops.open("CA-ON", "en");
        shops.in(shop, () -> {
            try (var connection = rows.getConnection();
                    var insert = connection.prepareStatement("""
                            insert into sent_form (person_id, id, request_digest, location, made_at)
                            select ?, uuidv7(), 'x', '/', now() - days * interval '1 day' from unnest(array[1, 40]) days""")) {
                insert.setObject(1, shop.office());
                return insert.executeUpdate();
            }
        });
        days.letPass(shop.tenant(), LocalDate.of(2026, 1, 5));
        int left = shops.in(shop, () -> {
            try (var connection = rows.getConnection();
                    var count = connection.prepareStatement("select count(*) from sent_form");
                    var row = count.executeQuery()) {
                row.next();
                return row.getInt(1);
            }
        });
        assertEquals(1, left);
    }
}
