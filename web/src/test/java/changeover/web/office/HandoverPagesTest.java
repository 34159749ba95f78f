package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.Offers;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.agreements.Yes;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.PartInHome;
import changeover.contracts.money.Money;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.plans.Plans;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A home with a plan of four instalments, half of its term gone by, changes hands today. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HandoverPagesTest {

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    HomeParts parts;

    @Inject
    Customers customers;

    @Inject
    Plans plans;

    @Inject
    Offers offers;

    @Inject
    Agreements agreements;

    @Inject
    Today today;

    @Inject
    EntityManager rows;

    private Agreement sold(AShop.Shop shop, UUID home) {
        return shops.in(shop, () -> {
            LocalDate began = today.day().minusMonths(6).withDayOfMonth(1);
            Plan plan = plans.draft(new PlanFacts(
                    "four",
                    new Wording("Four parts", "Quatre parts"),
                    1,
                    Money.of("400.00", "CAD"),
                    BigDecimal.ZERO,
                    4,
                    0,
                    false,
                    Catalogue.shipped().tasks().stream()
                            .filter(task -> task.cadence().json().contains("check-then-replace"))
                            .map(task -> new PlanFacts.Promise(task.code(), null))
                            .toList(),
                    List.of(),
                    List.of()));
            plan.putOnSale(began);
            plans.keep();
            Agreement agreement = agreements.offer(offers.forHome(home, plan.id(), began, began));
            agreements.accept(agreement.id(), new Yes("Adèle Fournier-Blake", began, SaleChannel.COUNTER, false));
            return agreement;
        });
    }

    /** The payers of the instalments, the first one first. */
    @SuppressWarnings("unchecked")
    private List<UUID> payers(AShop.Shop shop, UUID agreement) {
        return shops.in(
                shop,
                () -> rows.createNativeQuery(
                                "select customer_id from invoice where agreement_id = :agreement order by instalment",
                                UUID.class)
                        .setParameter("agreement", agreement)
                        .getResultList());
    }

    private UUID plays(AShop.Shop shop, UUID home, PartInHome part) {
        return shops.in(shop, () -> parts.on(home, part, today.day()))
                .orElseThrow()
                .customerId();
    }

    private LocalDate today(AShop.Shop shop) {
        return shops.in(shop, () -> today.day());
    }

    private UUID idOf(AShop.Shop shop, String name) {
        return shops.in(shop, () -> customers.find(name, 2)).getFirst().id();
    }

    @Test
    void a_home_is_sold_and_its_agreement_goes_on_with_the_new_owner() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-ON", language);
            var lived = homes.machines(shop, language);
            Agreement agreement = sold(shop, lived.home());
            String path = shop.at("homes/" + lived.home() + "/handover");
            as(shop.office())
                    .get(path)
                    .then()
                    .statusCode(200)
                    .body(containsString(
                            french ? "continue avec le nouveau propriétaire" : "goes on with the new owner"));
            post(
                            shop.office(),
                            path,
                            Map.of(
                                    "kind", "sold",
                                    "day", today(shop).toString(),
                                    "agreement", "follows",
                                    "name", "Basil Orme",
                                    "language", "fr"))
                    .statusCode(303)
                    .header("Location", containsString("/handover"));
            UUID newOwner = idOf(shop, "Basil Orme");
            for (PartInHome part : PartInHome.values()) {
                assertEquals(newOwner, plays(shop, lived.home(), part), part.code());
            }
            assertEquals(
                    newOwner,
                    shops.in(shop, () -> agreements.find(agreement.id()))
                            .orElseThrow()
                            .payerId());
            List<UUID> payers = payers(shop, agreement.id());
            assertEquals(lived.customer(), payers.get(0), "what was due before stays with the old owner");
            assertEquals(lived.customer(), payers.get(1));
            assertEquals(newOwner, payers.get(3));
            as(shop.office())
                    .get(path)
                    .then()
                    .body(containsString(french ? "vendue à Basil Orme" : "sold to Basil Orme"));
            post(
                            shop.office(),
                            path,
                            Map.of(
                                    "kind", "sold",
                                    "day", today(shop).plusDays(9).toString(),
                                    "agreement", "follows",
                                    "known", newOwner.toString(),
                                    "language", "en"))
                    .statusCode(422)
                    .body(containsString(french ? "déjà à eux" : "They have the home already"));
        }
    }

    @Test
    void a_home_is_let_and_the_payer_stays() {
        var shop = shops.open("CA-ON", "en");
        var lived = homes.machines(shop, "en");
        Agreement agreement = sold(shop, lived.home());
        UUID tenant = shops.in(
                shop,
                () -> customers
                        .add(Customer.Facts.of("Ines Vole", "fr", "555-0107", null))
                        .id());
        LocalDate day = today(shop);
        send(
                        shop.office(),
                        shop.api("homes/" + lived.home() + "/handovers"),
                        Map.of("kind", "let", "customer", tenant, "day", day.toString(), "follows", true))
                .statusCode(200)
                .body("agreement", equalTo(null))
                .body("handovers[0].kind", equalTo("let"));
        assertEquals(tenant, plays(shop, lived.home(), PartInHome.LIVES));
        assertEquals(tenant, plays(shop, lived.home(), PartInHome.LETS_IN));
        assertEquals(lived.customer(), plays(shop, lived.home(), PartInHome.PAYS));
        assertEquals(lived.customer(), plays(shop, lived.home(), PartInHome.GETS_REPORT));
        assertEquals(
                List.of(lived.customer()),
                payers(shop, agreement.id()).stream().distinct().toList());
    }

    @Test
    void an_agreement_that_does_not_follow_goes_to_its_ending_with_day_and_reason() {
        var shop = shops.open("CA-ON", "en");
        var lived = homes.machines(shop, "en");
        Agreement agreement = sold(shop, lived.home());
        String day = today(shop).toString();
        String to = post(
                        shop.office(),
                        shop.at("homes/" + lived.home() + "/handover"),
                        Map.of("kind", "sold", "day", day, "agreement", "ends", "name", "Basil Orme", "language", "en"))
                .statusCode(303)
                .extract()
                .header("Location");
        as(shop.office())
                .get(to)
                .then()
                .statusCode(200)
                .body(containsString("value=\"" + day + "\""))
                .body(containsString("value=\"home-sold\" selected"));
        assertEquals(
                List.of(lived.customer()),
                payers(shop, agreement.id()).stream().distinct().toList());
    }
}
