package changeover.web;

import static io.restassured.RestAssured.given;

import changeover.billing.tax.TaxConfirmation;
import changeover.billing.tax.TaxTables;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.NewBusiness;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Place;
import changeover.contracts.tenants.Role;
import changeover.web.session.PersonByHeader;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;

/** Opens businesses for the tests of pages and of the API, with an owner, an office and a technician in each. */
@ApplicationScoped
public class AShop {

    private static final AtomicInteger OPENED = new AtomicInteger();
    private static final String TOKEN = "AAAAAAAAAAAAAAAAAAAAAA";

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    @Inject
    People people;

    @Inject
    TaxTables taxes;

    /** One business that a test works in. */
    public record Shop(UUID tenant, String slug, UUID owner, UUID office, UUID technician) {

        public String at(String rest) {
            return "/" + slug + "/" + rest;
        }

        public String api(String rest) {
            return "/api/v1/" + slug + "/" + rest;
        }
    }

    /** @param region as ISO 3166-2: CA-QC, CA-ON */
    public Shop open(String region, String language) {
        String slug = "shop-" + OPENED.incrementAndGet();
        var shop = new Shop(UUID.randomUUID(), slug, UUID.randomUUID(), UUID.randomUUID(), UUID.randomUUID());
        current.run(shop.tenant(), shop.owner(), () -> {
            businesses.open(
                    new NewBusiness(
                            slug,
                            "Atelier " + slug,
                            "8 Foundry Street, Port Ambrose",
                            Place.of(region),
                            language,
                            "555-0100",
                            "desk@example.com",
                            "123456789 RT0001",
                            region.equals("CA-QC") ? "1234567890 TQ0001" : null,
                            region.equals("CA-QC") ? "0000-0000-01" : null,
                            false),
                    LocalDate.of(2026, 1, 5));
            taxes.confirm(
                    "CA-ON hst 2010-07-01 any any any",
                    new TaxConfirmation.Facts("The agency's page of rates", LocalDate.of(2026, 1, 5), null));
            people.add(Membership.begin(shop.owner(), "Odile Roe", slug + "-o@example.com", language, Role.OWNER));
            people.add(Membership.begin(shop.office(), "Basil Fenn", slug + "-b@example.com", language, Role.OFFICE));
            return people.add(Membership.begin(
                    shop.technician(), "Mika Tarn", slug + "-t@example.com", language, Role.TECHNICIAN));
        });
        return shop;
    }

    public <T> T in(Shop shop, Callable<T> work) {
        return current.run(shop.tenant(), shop.owner(), work);
    }

    public static RequestSpecification as(UUID person) {
        return given().header(PersonByHeader.HEADER, person.toString());
    }

    /** Posts a form as a page of ours would, with its token; redirects are not followed. */
    public static ValidatableResponse post(UUID person, String path, Map<String, ?> fields) {
        return as(person)
                .redirects()
                .follow(false)
                .cookie("csrf-token", TOKEN)
                .contentType(ContentType.URLENC.withCharset("UTF-8"))
                .formParam("csrf", TOKEN)
                .formParams(fields)
                .post(path)
                .then();
    }

    /** Sends a JSON document with the id of an operation. */
    public static ValidatableResponse send(UUID person, String path, Object document) {
        return as(person)
                .header("Operation-Id", UUID.randomUUID().toString())
                .contentType(ContentType.JSON)
                .body(document)
                .post(path)
                .then();
    }

    /**
     * Puts a plan of 249.00 with two visits on sale and sells it over the API from that day, with Anselm Birk's yes.
     *
     * @return the agreement
     */
    public static String sold(Shop shop, String home, LocalDate day, List<Map<String, String>> tasks) {
        String plan = send(
                        shop.owner(),
                        shop.api("plans"),
                        Map.of(
                                "code", "two",
                                "nameEn", "Two turns",
                                "nameFr", "Deux saisons",
                                "visits", 2,
                                "price", "249.00",
                                "onSaleFrom", day.toString(),
                                "tasks", tasks))
                .statusCode(201)
                .extract()
                .path("id");
        String agreement = send(
                        shop.owner(),
                        shop.api("agreements"),
                        Map.of("home", home, "plan", plan, "from", day.toString()))
                .statusCode(201)
                .extract()
                .path("id");
        send(
                        shop.owner(),
                        shop.api("agreements/" + agreement + "/acceptance"),
                        Map.of("by", "Anselm Birk", "channel", "counter"))
                .statusCode(200);
        return agreement;
    }
}
