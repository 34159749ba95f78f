package changeover.web.portal;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.component.VEvent;
import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A calendar is told of each visit, of its moves and of its end, until its link is taken back. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class CalendarPagesTest {

    private static final LocalDate TODAY = LocalDate.now(ZoneId.of("America/Toronto"));
    private static final LocalDate SUMMER = LocalDate.of(TODAY.getYear() + 1, 7, 6);

    @Inject
    AShop shops;

    @Inject
    People people;

    @Test
    void a_calendar_follows_a_visit_that_is_set_moved_handed_over_and_taken_off() {
        AShop.Shop shop = shops.open("CA-QC", "en");
        UUID second = shops.in(
                shop,
                () -> people.add(Membership.begin(
                                UUID.randomUUID(), "Rufus Ashe", shop.slug() + "-r@example.com", "fr", Role.TECHNICIAN))
                        .personId());
        String home = home(shop);
        String visit = visit(shop, home);
        String own = link(post(shop.technician(), shop.at("field/calendar"), Map.of())
                .statusCode(200)
                .extract()
                .asString());
        String theirs = link(post(second, shop.at("field/calendar"), Map.of())
                .statusCode(200)
                .extract()
                .asString());
        String household = link(post(shop.office(), shop.at("homes/" + home + "/calendar"), Map.of("language", "fr"))
                .statusCode(200)
                .extract()
                .asString());
        assertEquals(List.of(), events(shop, own));

        appoint(shop, visit, shop.technician(), "09:00");
        VEvent set = events(shop, own).getFirst();
        assertEquals(
                Instant.parse(SUMMER + "T13:00:00Z"),
                set.getDateStart().getValue().toInstant());
        assertEquals("9 Tannery Row", set.getSummary().getValue());
        assertTrue(set.getUrl().getValue().endsWith(shop.at("field/visits/" + visit)));
        VEvent seen = events(shop, household).getFirst();
        assertEquals(
                "Mika Tarn passera.\nPour la déplacer, appelez au 555-0100.",
                seen.getDescription().getValue());
        String before = feed(shop, own).header("ETag");
        given().header("If-None-Match", before)
                .get(shop.at("calendars/" + own))
                .then()
                .statusCode(304);

        appoint(shop, visit, shop.technician(), "10:00");
        assertEquals(1, events(shop, own).getFirst().getSequence().getValue());
        assertNotEquals(before, feed(shop, own).header("ETag"));

        appoint(shop, visit, second, "10:00");
        assertTrue(events(shop, own).getFirst().getStatus().isCancelled());
        assertTrue(events(shop, theirs).getFirst().getStatus().isTentative());
        post(shop.office(), shop.at("visits/" + visit + "/told"), Map.of()).statusCode(303);
        assertTrue(events(shop, theirs).getFirst().getStatus().isConfirmed());
        List<VEvent> one = events(shop, household);
        assertEquals(1, one.size());
        assertTrue(one.getFirst().getDescription().getValue().startsWith("Rufus Ashe"));
        assertEquals(set.getUid(), one.getFirst().getUid());

        post(shop.office(), shop.at("visits/" + visit + "/ending"), Map.of("how", "cancelled", "why", "They moved"))
                .statusCode(303);
        assertTrue(events(shop, theirs).getFirst().getStatus().isCancelled());
        assertEquals(4, events(shop, household).getFirst().getSequence().getValue());
    }

    @Test
    void a_link_taken_back_and_one_of_another_business_open_nothing() {
        AShop.Shop shop = shops.open("CA-QC", "en");
        String secret = link(post(shop.technician(), shop.at("field/calendar"), Map.of())
                .statusCode(200)
                .extract()
                .asString());
        AShop.Shop other = shops.open("CA-QC", "en");
        given().get(other.at("calendars/" + secret)).then().statusCode(404);
        given().get(shop.at("calendars/" + secret.toLowerCase())).then().statusCode(404);
        given().get(shop.at("calendars/none")).then().statusCode(404);
        String page = as(shop.technician())
                .get(shop.at("field/calendar"))
                .then()
                .statusCode(200)
                .extract()
                .asString();
        assertFalse(page.contains(secret));
        post(shop.technician(), shop.at("field/calendar/revocation"), Map.of()).statusCode(303);
        given().get(shop.at("calendars/" + secret)).then().statusCode(404);
    }

    @Test
    void a_technician_who_left_reads_nothing_more() {
        AShop.Shop shop = shops.open("CA-QC", "en");
        String secret = link(post(shop.technician(), shop.at("field/calendar"), Map.of())
                .statusCode(200)
                .extract()
                .asString());
        assertEquals(200, feed(shop, secret).statusCode());
        post(
                        shop.owner(),
                        shop.at("shop/people/" + shop.technician() + "/ending"),
                        Map.of("day", TODAY.minusDays(1).toString()))
                .statusCode(303);
        given().get(shop.at("calendars/" + secret)).then().statusCode(404);
    }

    private static Response feed(AShop.Shop shop, String secret) {
        return given().get(shop.at("calendars/" + secret))
                .then()
                .statusCode(200)
                .contentType("text/calendar;charset=utf-8")
                .extract()
                .response();
    }

    private static List<VEvent> events(AShop.Shop shop, String secret) {
        return Biweekly.parse(feed(shop, secret).asString()).first().getEvents();
    }

    private static String link(String page) {
        return page.replaceAll("(?s).*/calendars/([A-Za-z0-9_-]{43}).*", "$1");
    }

    private static void appoint(AShop.Shop shop, String visit, UUID technician, String starts) {
        send(
                        shop.owner(),
                        shop.api("visits/" + visit + "/appointment"),
                        Map.of("technician", technician.toString(), "day", SUMMER.toString(), "starts", starts))
                .statusCode(200);
    }

    private static String home(AShop.Shop shop) {
        as(shop.owner())
                .header("Operation-Id", UUID.randomUUID())
                .contentType("text/csv")
                .body("""
                        home,customer,language,street,city,region,country,unit,kind,fits
                        h,Anselm Birk,fr,9 Tannery Row,Port Ambrose,QC,CA,Filter,filter-slot,size=16x25x4; thickness=4
                        """)
                .post(shop.api("imports/homes"))
                .then()
                .statusCode(200);
        return as(shop.owner()).get(shop.api("homes")).then().extract().path("[0].id");
    }

    private static String visit(AShop.Shop shop, String home) {
        String page = post(
                        shop.office(),
                        shop.at("homes/" + home + "/visits"),
                        Map.of(
                                "kind", "extra",
                                "first", SUMMER.toString(),
                                "last", SUMMER.plusDays(20).toString(),
                                "minutes", "60",
                                "note", "A look at the drain"))
                .statusCode(303)
                .extract()
                .header("Location");
        return page.replaceAll(".*/visits/([0-9a-f-]{36}).*", "$1");
    }
}
