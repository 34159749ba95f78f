package changeover.web.session;

import static io.restassured.RestAssured.given;
import static org.hamcrest.CoreMatchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.NewBusiness;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Place;
import changeover.contracts.tenants.Role;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class AtTheDoorTest {

    static final String IDA = "11111111-1111-4111-8111-111111111111";
    static boolean open;

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    @Inject
    People people;

    @BeforeEach
    void twoBusinesses() {
        if (!open) {
            open = true;
            open("kiln-lane", UUID.fromString(IDA));
            open("quarry-road", UUID.randomUUID());
        }
    }

    private void open(String slug, UUID owner) {
        current.run(UUID.randomUUID(), owner, () -> {
            businesses.open(
                    new NewBusiness(
                            slug, slug, "1 Kiln Lane", Place.of("CA-ON"), "en", null, null, null, null, null, true),
                    LocalDate.of(2026, 4, 1));
            return people.add(Membership.begin(owner, "Ida Roe", "ida@example.com", "en", Role.OWNER));
        });
    }

    private static RequestSpecification asIda() {
        return given().header(PersonByHeader.HEADER, IDA);
    }

    @Test
    void a_member_comes_in() {
        asIda().redirects().follow(false).get("/kiln-lane").then().statusCode(303);
    }

    @Test
    void another_business_is_not_found_like_one_that_does_not_exist() {
        String theirs =
                asIda().get("/quarry-road").then().statusCode(404).extract().asString();
        String none =
                asIda().get("/no-such-place").then().statusCode(404).extract().asString();
        assertEquals(none, theirs);
    }

    @Test
    void odd_spellings_lead_nowhere() {
        asIda().urlEncodingEnabled(false).get("/kiln%2Dlane;x=1/today").then().statusCode(404);
        asIda().urlEncodingEnabled(false).get("/..%2fkiln-lane").then().statusCode(404);
        asIda().get("/KILN-LANE/today").then().statusCode(404);
    }

    @Test
    void a_stranger_to_the_api_is_asked_for_a_token() {
        given().get("/api/v1/kiln-lane/plans").then().statusCode(401).header("WWW-Authenticate", "Bearer");
    }

    @Test
    void every_answer_carries_the_policy_of_contents() {
        given().get("/signed-out").then().statusCode(200).header("Content-Security-Policy", containsString("'self'"));
    }
}
