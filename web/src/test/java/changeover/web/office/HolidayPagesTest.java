package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Holidays;
import changeover.contracts.calendar.Window;
import changeover.scheduling.dayplan.Rosters;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Which holidays of its place a business keeps. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HolidayPagesTest {

    @Inject
    AShop shops;

    @Inject
    Rosters rosters;

    @Test
    void in_quebec_one_of_the_two_days_about_easter_is_kept_by_choice() {
        var shop = shops.open("CA-QC", "fr");
        String path = shop.at("shop/holidays");
        LocalDate friday = LocalDate.of(2027, 3, 26);
        LocalDate monday = LocalDate.of(2027, 3, 29);
        assertEquals(List.of(false, true), works(shop, friday, monday));
        as(shop.office()).get(path).then().statusCode(200).body(containsString(", lundi de Pâques"));
        post(shop.office(), path, Map.of("kept", List.of(Holidays.EASTER_MONDAY)))
                .statusCode(303);
        assertEquals(List.of(true, false), works(shop, friday, monday));
        post(shop.office(), path, Map.of("kept", List.of("christmas-day")))
                .statusCode(422)
                .body(containsString("gardez l’un des deux"));
        post(shop.office(), path, Map.of("kept", List.of(Holidays.GOOD_FRIDAY), "seen", "labour-day"))
                .statusCode(422);
        assertEquals(List.of(true, false), works(shop, friday, monday));
    }

    @Test
    void a_shop_may_work_on_a_holiday_that_is_usual_in_its_place() {
        var shop = shops.open("US-NY", "en");
        String path = shop.at("shop/holidays");
        LocalDate columbus = LocalDate.of(2027, 10, 11);
        LocalDate thanksgiving = LocalDate.of(2027, 11, 25);
        assertEquals(List.of(false, false), works(shop, columbus, thanksgiving));
        post(shop.owner(), path, Map.of("kept", List.of("thanksgiving-day"))).statusCode(303);
        assertEquals(List.of(true, false), works(shop, columbus, thanksgiving));
        as(shop.office())
                .get(shop.at("shop/people/" + shop.technician() + "/roster"))
                .then()
                .body(containsString("Thanksgiving Day"))
                .body(not(containsString("Columbus Day")));
    }

    private List<Boolean> works(AShop.Shop shop, LocalDate... days) {
        return List.of(days).stream()
                .map(day -> shops.in(
                        shop,
                        () -> rosters.of(new Window(day, day.plusDays(1)))
                                .on(shop.technician(), day)
                                .isPresent()))
                .toList();
    }
}
