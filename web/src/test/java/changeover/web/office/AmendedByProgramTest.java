package changeover.web.office;

import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.scheduling.closeout.Closures;
import changeover.web.AShop.Shop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A closed visit is put right by a program. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class AmendedByProgramTest extends AReviewedShop {

    @Inject
    Closures closures;

    @Inject
    EntityManager rows;

    @Test
    void a_program_takes_an_hour_of_coming_back() {
        Shop shop = shops.open("CA-ON", "en");
        String visit = OrderPagesTest.visit(shop, priced(shop, "en").home());
        close(shop, visit, List.of());
        String arrived = shops.in(
                shop,
                () -> (String) rows.createNativeQuery("select cast(id as text) from operation where kind = 'arrive'")
                        .getSingleResult());
        send(
                        shop.office(),
                        shop.api("visits/" + visit + "/amendments"),
                        Map.of(
                                "why",
                                "Nobody saw when",
                                "operations",
                                List.of(Map.of(
                                        "id",
                                        UUID.randomUUID().toString(),
                                        "device",
                                        "books",
                                        "sequence",
                                        1,
                                        "at",
                                        "2026-11-30T10:00:00Z",
                                        "kind",
                                        "take_back",
                                        "body",
                                        Map.of("operation", arrived)))))
                .statusCode(200)
                .body("version", equalTo(2));
        assertEquals(
                true,
                shops.in(
                        shop,
                        () -> closures.of(UUID.fromString(visit))
                                .orElseThrow()
                                .arrivedAt()
                                .isEmpty()));
    }
}
