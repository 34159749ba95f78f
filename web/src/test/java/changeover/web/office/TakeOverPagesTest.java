package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.web.AShop;
import changeover.web.Shown;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class TakeOverPagesTest extends OldSheetTyped {

    private static final String TOKEN = "AAAAAAAAAAAAAAAAAAAAAA";

    private static final String HOMES = """
            home,customer,language,phone,email,street,city,region,postal,country,latitude,longitude,access,unit,kind,make,model,serial,installed,fits,nameplate
            H1,Imre Vance,fr,,,3 Tannery Row,Port Ambrose,ON,,CA,,,,Head,ductless-head,,,,,,
            H2,Una Sorrel,en,,,5 Tannery Row,Port Ambrose,ON,,CA,,,,Head,ductless-head,,,,,,
            """;

    @Test
    void several_lists_are_brought_on_one_yes_and_the_year_counts_from_the_last_times() {
        for (String language : List.of("en", "fr")) {
            var shop = shops.open("CA-ON", language);
            LocalDate day = planOnSale(shop);
            post(shop.office(), shop.at("shop/take-over"), Map.of("takeOver", day.toString(), "minutes", "9"))
                    .statusCode(303);
            part(shop);
            LocalDate done = day.minusMonths(8);
            Map<String, String> files = new LinkedHashMap<>();
            files.put("times.csv", """
                    home,unit,task,day
                    H1,Head,head-sleeve,%s
                    "5 Tannery Row, Port Ambrose",Head,head-sleeve,to be read
                    H2,Head,head-sleeve,2026-01-05
                    H9,Head,head-sleeve,2026-01-05
                    """.formatted(done));
            files.put("homes.csv", HOMES);
            files.put("ententes.csv", """
                    Maison;Formule;Début;Prix;Payé;Visites faites
                    H1;two;%1$s;249,00;249,00;0
                    H2;Deux saisons;%1$s;199;0;
                    """.formatted(day.minusMonths(2)));
            files.put("counts.csv", "place,part,quantity\n%s,pad-7,12.5\n%1$s,pad-8,1\n".formatted(shelf(language)));
            files.put("next.csv", "document,next\nestimate,71\nententes,1200\n");
            files.put("other.csv", "name,colour\nVance,green\n");

            String look = upload(shop, files, Map.of("what", "look"));
            Shown.keep("take-over-look-" + language, look);
            assertTrue(look.contains(language.equals("fr") ? "Rien n’est écrit encore." : "Nothing is written yet."));
            assertTrue(look.contains("H9") && look.contains("pad-8") && look.contains("other.csv"), look);
            assertEquals(0, count(shop, "home"));
            assertEquals(0, count(shop, "agreement"));

            Map<String, String> other = carried(look);
            other.put("seen", "something else");
            String changed = upload(shop, Map.of(), other);
            assertTrue(
                    changed.contains(
                            language.equals("fr")
                                    ? "quelque chose a changé ici"
                                    : "Since you looked, something here changed."),
                    changed);
            assertEquals(carried(look), carried(changed));
            assertEquals(0, count(shop, "home"));

            String written = upload(shop, Map.of(), carried(look));
            assertTrue(written.contains(language.equals("fr") ? "Écrit." : "Written."), written);
            assertEquals(2, count(shop, "home"));
            assertEquals(2, count(shop, "agreement_taken_over"));
            assertEquals(1, count(shop, "agreement where number = 1200"));
            assertEquals(
                    1,
                    count(
                            shop,
                            "stock_movement where quantity = 12.5 and kind = 'count' and day = '" + day
                                    + "' and why in ('Take-over count', 'Inventaire de reprise')"));
            assertEquals(day.minusMonths(8).plusMonths(9), due(shop, "H1"));
            assertEquals(0, lines(shop, "H1"));
            assertEquals(1, lines(shop, "H2"));
            assertEquals(0, minutesWrong(shop));
            assertTrue(as(shop.office())
                    .get(shop.at("shop/numbers"))
                    .then()
                    .extract()
                    .asString()
                    .contains("0071"));
            as(shop.office()).get(shop.at("shop/take-over")).then().body(containsString("5 Tannery Row"));

            files.remove("homes.csv");
            String again = upload(shop, files, Map.of("what", "look"));
            assertTrue(again.contains(language.equals("fr") ? "Rien ne change." : "Nothing changes."), again);
        }
    }

    @Test
    void what_is_told_by_hand_lays_the_year_out_again_on_the_page_and_over_the_api() {
        var shop = shops.open("CA-ON", "en");
        LocalDate day = planOnSale(shop);
        AShop.send(
                        shop.office(),
                        shop.api("take-over/files"),
                        Map.of(
                                "files",
                                List.of(
                                        Map.of("name", "homes.csv", "text", HOMES),
                                        Map.of(
                                                "name",
                                                "a.csv",
                                                "text",
                                                "home,plan,from,price\nH1,two," + day.minusMonths(2) + ",249\n"))))
                .statusCode(200)
                .body("bad", equalTo(0), "dry", equalTo(false));
        String home = one(shop, "select cast(id as text) from home where key = 'H1'");
        String unit = one(shop, "select cast(id as text) from equipment where home_id = '" + home + "'");
        long visits = count(shop, "visit");
        assertEquals(day, due(shop, "H1"), "nobody knows when, so it is due from the take-over");

        String field = unit + "-head-sleeve";
        LocalDate done = day.minusMonths(5);
        String page = OldSheetTyped.page(shop, shop.at("homes/" + home + "/last-times"));
        Shown.keep("last-times", page);
        assertTrue(page.contains("day-" + field));
        post(
                        shop.office(),
                        shop.at("homes/" + home + "/last-times"),
                        Map.of("day-" + field, day.plusDays(1).toString()))
                .statusCode(422)
                .body(containsString("Later than the take-over"));
        post(shop.office(), shop.at("homes/" + home + "/last-times"), Map.of("day-" + field, done.toString()))
                .statusCode(303);
        assertEquals(done.plusMonths(9), due(shop, "H1"));
        assertEquals(visits, count(shop, "visit"));

        AShop.send(
                        shop.office(),
                        shop.api("homes/" + home + "/last-times"),
                        Map.of("times", List.of(Map.of("unit", unit, "task", "head-sleeve"))))
                .statusCode(200)
                .body("find { it.task == 'head-sleeve' }.toBeRead", equalTo(true));
        assertEquals(day, due(shop, "H1"));
        assertEquals(1, lines(shop, "H1"));
        assertEquals(0, minutesWrong(shop));
        post(shop.office(), shop.at("homes/" + home + "/last-times"), Map.of("day-" + field, done.toString()))
                .statusCode(303);
        assertEquals(0, lines(shop, "H1"));
        assertEquals(0, minutesWrong(shop));
        as(shop.office()).get(shop.at("shop/take-over")).then().body(not(containsString("3 Tannery Row")));

        post(shop.technician(), shop.at("homes/" + home + "/last-times"), Map.of())
                .statusCode(404);
        as(shops.open("CA-ON", "en").office())
                .get(shop.at("homes/" + home + "/last-times"))
                .then()
                .statusCode(404);
    }

    private static String shelf(String language) {
        return language.equals("fr") ? "Tablette" : "Shelf";
    }

    private void part(AShop.Shop shop) {
        shops.in(
                shop,
                () -> rows.createNativeQuery(
                                "insert into part (code, name_en, name_fr, unit) values ('pad-7', 'Pad 7', 'Tampon 7', 'C62')")
                        .executeUpdate());
    }

    private LocalDate due(AShop.Shop shop, String home) {
        return LocalDate.parse(one(
                shop,
                "select cast(min(t.due_from) as text) from visit_task t join visit v on v.id = t.visit_id join home h on h.id = v.home_id"
                        + " where t.task_code = 'head-sleeve' and h.key = '" + home + "'"));
    }

    private long lines(AShop.Shop shop, String home) {
        return count(
                shop,
                "visit_task t join visit v on v.id = t.visit_id join home h on h.id = v.home_id"
                        + " where t.task_code = 'read-last-time' and h.key = '" + home + "'");
    }

    private long minutesWrong(AShop.Shop shop) {
        return count(
                shop, "visit v where minutes <> (select sum(t.minutes) from visit_task t where t.visit_id = v.id)");
    }

    private String one(AShop.Shop shop, String sql) {
        return shops.in(shop, () -> String.valueOf(rows.createNativeQuery(sql).getSingleResult()));
    }

    private static Map<String, String> carried(String look) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("what", "write");
        Matcher seen = Pattern.compile("name=\"seen\" value=\"([^\"]*)\"").matcher(look);
        assertTrue(seen.find());
        fields.put("seen", seen.group(1));
        Matcher one = Pattern.compile(
                        "name=\"carriedName\" value=\"([^\"]*)\"><input type=\"hidden\" name=\"carried\" value=\"([^\"]*)\"")
                .matcher(look);
        for (int at = 0; one.find(); at++) {
            fields.put("carriedName " + at, one.group(1));
            fields.put("carried " + at, one.group(2));
        }
        return fields;
    }

    /** @param fields those that come more than once with a number behind their name */
    private static String upload(AShop.Shop shop, Map<String, String> files, Map<String, String> fields) {
        RequestSpecification form = as(shop.office())
                .redirects()
                .follow(false)
                .cookie("csrf-token", TOKEN)
                .multiPart("csrf", TOKEN);
        files.forEach((name, text) -> form.multiPart("file", name, text.getBytes(StandardCharsets.UTF_8), "text/csv"));
        fields.forEach((name, text) -> form.multiPart(name.split(" ")[0], text));
        ValidatableResponse answer = form.post(shop.at("shop/take-over/files")).then();
        return answer.statusCode(200).extract().asString();
    }
}
