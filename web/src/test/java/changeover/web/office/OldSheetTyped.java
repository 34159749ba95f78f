package changeover.web.office;

import static changeover.web.AShop.as;

import changeover.contracts.money.Money;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.plans.Plans;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
import changeover.web.AShop;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the tests of old spreadsheets share: a plan on sale, a file that is brought, and the form of its page. */
class OldSheetTyped {

    private static final String TOKEN = "AAAAAAAAAAAAAAAAAAAAAA";
    private static final Map<String, String> KINDS = Map.of(
            "Thermo murale", "ductless-head", "Heat pump", "outdoor-heat-pump", "Échangeur", "hrv", "?? voir", "none");

    @Inject
    AShop shops;

    @Inject
    Plans plans;

    @Inject
    Today today;

    @Inject
    EntityManager rows;

    LocalDate planOnSale(AShop.Shop shop) {
        return shops.in(shop, () -> {
            LocalDate day = today.day();
            plans.draft(new PlanFacts(
                            "two",
                            new Wording("Two turns", "Deux saisons"),
                            2,
                            Money.of("249.00", "CAD"),
                            BigDecimal.ZERO,
                            1,
                            0,
                            false,
                            List.of(
                                    new PlanFacts.Promise("gas-combustion", null),
                                    new PlanFacts.Promise("outdoor-coil", null),
                                    new PlanFacts.Promise("compressor-amps", null),
                                    new PlanFacts.Promise("exchanger-core-hrv", null),
                                    new PlanFacts.Promise("head-split", null),
                                    new PlanFacts.Promise("head-sleeve", null)),
                            List.of(),
                            List.of()))
                    .putOnSale(day);
            return day;
        });
    }

    String brought(AShop.Shop shop, byte[] file) {
        String to = send(shop.office(), shop, file).statusCode(303).extract().header("Location");
        return to.substring(to.indexOf("/" + shop.slug() + "/"));
    }

    static io.restassured.response.ValidatableResponse send(UUID person, AShop.Shop shop, byte[] file) {
        return as(person)
                .redirects()
                .follow(false)
                .cookie("csrf-token", TOKEN)
                .multiPart("csrf", TOKEN)
                .multiPart("file", "clients.csv", file, "text/csv")
                .post(shop.at("homes/sheets"))
                .then();
    }

    static String page(AShop.Shop shop, String path) {
        return as(shop.office()).get(path).then().statusCode(200).extract().asString();
    }

    /** What stands in the form of a page. */
    static Map<String, String> form(String page) {
        Map<String, String> form = new LinkedHashMap<>();
        Matcher select = Pattern.compile("<select id=\"[^\"]*\" name=\"([^\"]*)\".*?</select>", Pattern.DOTALL)
                .matcher(page);
        while (select.find()) {
            Matcher chosen =
                    Pattern.compile("<option value=\"([^\"]*)\" selected").matcher(select.group());
            form.put(select.group(1), chosen.find() ? chosen.group(1) : "");
        }
        Matcher input = Pattern.compile("<input[^>]*>").matcher(page);
        while (input.find()) {
            Matcher name = Pattern.compile("name=\"([^\"]*)\"").matcher(input.group());
            Matcher value = Pattern.compile("value=\"([^\"]*)\"").matcher(input.group());
            if (name.find()
                    && value.find()
                    && !Set.of("csrf", "q", "once", "writer").contains(name.group(1))) {
                form.put(name.group(1), value.group(1));
            }
        }
        return form;
    }

    static void name(Map<String, String> said, String page) {
        Map.copyOf(said).forEach((field, word) -> {
            if (field.startsWith("kindWord-")) {
                said.put(field.replace("Word", ""), KINDS.getOrDefault(word.strip(), "none"));
            } else if (field.startsWith("planWord-")) {
                said.put(field.replace("Word", ""), "two");
            }
        });
    }

    long count(AShop.Shop shop, String what) {
        return shops.in(
                shop,
                () -> ((Number) rows.createNativeQuery("select count(*) from " + what)
                                .getSingleResult())
                        .longValue());
    }
}
