package changeover.web.office;

import static changeover.web.AShop.as;
import static org.hamcrest.CoreMatchers.containsString;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.tenants.Today;
import changeover.web.ALivedInHome;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DaySheetPagesTest {

    @Inject
    AShop shops;

    @Inject
    ALivedInHome homes;

    @Inject
    Today today;

    @Test
    void a_days_sheets_are_printed_with_blank_close_outs_and_a_day_without_stops_too() {
        for (String language : new String[] {"en", "fr"}) {
            var shop = shops.open("CA-ON", language);
            homes.sold(shop, language);
            LocalDate day = shops.in(shop, () -> today.day());
            int empty = pdf(shop, day.plusDays(1)).length;
            int full = pdf(shop, day.plusDays(8)).length;
            assertTrue(full > empty, full + " bytes with a stop, " + empty + " without");
            as(shop.office())
                    .get(shop.at("today"))
                    .then()
                    .body(containsString("season/" + day.plusDays(1) + "/sheets.pdf"));
            as(shop.technician())
                    .get(shop.at("season/" + day + "/sheets.pdf"))
                    .then()
                    .statusCode(404);
        }
    }

    private static byte[] pdf(AShop.Shop shop, LocalDate day) {
        return as(shop.office())
                .get(shop.at("season/" + day + "/sheets.pdf"))
                .then()
                .statusCode(200)
                .contentType("application/pdf")
                .extract()
                .asByteArray();
    }
}
