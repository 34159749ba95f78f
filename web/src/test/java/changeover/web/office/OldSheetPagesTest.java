package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.oldsheet.AnUntidySheet;
import changeover.web.AShop;
import changeover.web.Shown;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A stranger takes over an untidy spreadsheet in mid-season. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class OldSheetPagesTest extends OldSheetTyped {

    private static final long SEED = 20261130;

    @Test
    void three_hundred_untidy_rows_are_taken_over_and_the_bad_ones_mended() {
        for (String language : List.of("fr", "en")) {
            var shop = shops.open("CA-QC", language);
            LocalDate day = planOnSale(shop);
            var sheet = new AnUntidySheet(SEED, day);
            String path = brought(shop, sheet.bytes());
            String guessed = page(shop, path);
            assertTrue(guessed.contains("name=\"kindWord-0\""), "words for machines are asked for");
            post(shop.office(), path + "/homes", Map.of("what", "good")).statusCode(422);
            assertEquals(0L, count(shop, "home"));

            Map<String, String> said = form(guessed);
            name(said, guessed);
            post(shop.office(), path + "/reading", said).statusCode(303);
            String twofold = page(shop, path);
            assertTrue(
                    twofold.contains(
                            language.equals("fr")
                                    ? "Certains jours peuvent se lire de deux façons"
                                    : "Some days may be read in two ways"),
                    twofold);
            said.put("dayOrder", "day");
            post(shop.office(), path + "/reading", said).statusCode(303);
            String read = page(shop, path);
            Shown.keep("old-sheet-" + language, read);
            assertTrue(
                    read.contains((language.equals("fr") ? "Lignes à corriger\u00a0: " : "Rows to be mended: ")
                            + AnUntidySheet.BAD),
                    read);
            assertEquals(0L, count(shop, "home"));

            post(shop.office(), path + "/homes", Map.of("what", "all")).statusCode(422);
            assertEquals(0L, count(shop, "home"));
            post(shop.office(), path + "/homes", Map.of("what", "good")).statusCode(303);
            assertEquals((long) AnUntidySheet.homes(), count(shop, "home"));
            tellsTheTruth(shop, day);

            post(shop.office(), path + "/homes", Map.of("what", "good")).statusCode(303);
            assertEquals((long) AnUntidySheet.homes(), count(shop, "home"));
            mended(shop, path);
        }
    }

    /** Nothing before the day is planned, asked for or called late; every agreement has its rest of the year. */
    private void tellsTheTruth(AShop.Shop shop, LocalDate day) {
        long agreements = count(shop, "agreement_taken_over");
        assertTrue(agreements > 60, "agreements: " + agreements);
        assertEquals(agreements, count(shop, "year_planned"));
        assertTrue(count(shop, "visit") > 30, "visits: " + count(shop, "visit"));
        assertEquals(0L, count(shop, "visit where window_until <= date '" + day + "'"));
        assertEquals(0L, count(shop, "visit where window_from < date '" + day + "'"));
        assertEquals(0L, count(shop, "unkept_promise where due_until <= date '" + day + "'"));
        assertEquals(0L, count(shop, "invoice"));
        assertEquals(0L, count(shop, "outbox"));
        assertEquals(
                0L,
                count(
                        shop,
                        "agreement_taken_over t join agreement a on a.id = t.agreement_id join home h on h.id = a.home_id"
                                + " where h.to_be_read and 1 <> (select count(*) from visit v join visit_task k on k.visit_id = v.id"
                                + " where v.agreement_id = a.id and k.task_code = 'read-equipment')"));
        assertTrue(count(shop, "unit_history where visit_id is null") > 0, "what was done before is known");
        assertEquals(
                0L,
                count(
                        shop,
                        "visit v where v.kind = 'plan' and not exists (select from visit_task t where t.tenant_id ="
                                + " v.tenant_id and t.visit_id = v.id)"));
        assertEquals(
                0L,
                count(
                        shop,
                        "home h where not exists (select from home_part p where p.tenant_id = h.tenant_id and"
                                + " p.home_id = h.id and p.part = 'pays')"));
        assertTrue(count(shop, "home where postal is null") > 40, "missing postal codes keep nobody out");
    }

    private void mended(AShop.Shop shop, String path) {
        String back = as(shop.office())
                .get(path + "/bad-rows.csv")
                .then()
                .statusCode(200)
                .extract()
                .asString();
        assertEquals(AnUntidySheet.BAD + 1, back.strip().split("\r\n").length, back);
        String again = brought(shop, AnUntidySheet.mended(back).getBytes(StandardCharsets.UTF_8));
        Map<String, String> said = form(page(shop, again));
        assertEquals("name", said.get("column-0"));
        assertEquals("", said.get("column-20"));
        assertEquals("day", said.get("dayOrder"));
        post(shop.office(), again + "/reading", said).statusCode(303);
        String mended = page(shop, again);
        Shown.keep("old-sheet-mended", mended);
        post(shop.office(), again + "/homes", Map.of("what", "all")).statusCode(303);
        assertEquals((long) AnUntidySheet.homes() + AnUntidySheet.BAD, count(shop, "home"));
        post(shop.office(), again + "/removal", Map.of()).statusCode(303);
        as(shop.office()).get(again).then().statusCode(404);
    }
}
