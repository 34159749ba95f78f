package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static changeover.web.AShop.send;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Holidays;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Ids;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
import changeover.scheduling.dayplan.Appointment;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.change.HoursTold;
import changeover.scheduling.dayplan.change.Rings;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.stock.Stock;
import changeover.scheduling.stock.StockPlaces;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Mika Tarn leaves on a Monday, with a visit on the Tuesday and two pads in the van. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class LeavingPagesTest {

    @Inject
    AShop shops;

    @Inject
    Homes homes;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    HoursTold told;

    @Inject
    Rings rings;

    @Inject
    People people;

    @Inject
    Parts parts;

    @Inject
    Stock stock;

    @Inject
    StockPlaces places;

    @Inject
    Today today;

    private LocalDate tuesday(AShop.Shop shop) {
        return shops.in(
                shop,
                () -> today.day()
                        .plusDays(3)
                        .datesUntil(today.day().plusDays(60))
                        .filter(day -> day.getDayOfWeek() == DayOfWeek.TUESDAY
                                && !Holidays.isHoliday("CA-QC", day, Holidays.EasterDay.GOOD_FRIDAY))
                        .findFirst()
                        .orElseThrow());
    }

    private UUID given(AShop.Shop shop, LocalDate day, int hour, boolean isTold) {
        return shops.in(shop, () -> {
            UUID home = homes.add(Home.Facts.at(hour + " Tannery Row", "Port Ambrose", "QC", null, "CA"))
                    .id();
            UUID visit = visits.make(new NewVisit(
                            home, null, VisitKind.EXTRA, Window.ofDay(day), 60, null, "look at the drain", List.of()))
                    .id();
            appointments.give(visit, new Appointments.Slot(shop.technician(), day, LocalTime.of(hour, 0), null));
            if (isTold) {
                told.tell(visit);
            }
            return visit;
        });
    }

    private UUID colleague(AShop.Shop shop, String language) {
        UUID id = UUID.randomUUID();
        shops.in(
                shop,
                () -> people.add(Membership.begin(id, "Ben Ousel", id + "@example.com", language, Role.TECHNICIAN)));
        return id;
    }

    private UUID pads(AShop.Shop shop) {
        return shops.in(shop, () -> {
            parts.keep(new KnownPart("pad-112", new Wording("Pad", "Tampon"), "C62", null, null));
            UUID van = places.van(shop.technician()).orElseThrow().id();
            stock.receive(Ids.next(), van, List.of(new KnownPart.Amount("pad-112", BigDecimal.valueOf(3))), null);
            return van;
        });
    }

    @Test
    void one_page_walks_from_the_last_day_to_the_empty_van() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            UUID ben = colleague(shop, language);
            LocalDate day = tuesday(shop);
            UUID visit = given(shop, day, 9, true);
            UUID van = pads(shop);
            String path = shop.at("shop/people/" + shop.technician() + "/leaving");
            as(shop.owner())
                    .get(path)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Aucun dernier jour" : "No last day is written"));
            post(shop.owner(), path + "/visits", Map.of()).statusCode(422);
            post(shop.owner(), path + "/day", Map.of("day", "")).statusCode(422);
            post(shop.owner(), path + "/day", Map.of("day", day.minusDays(1).toString()))
                    .statusCode(303);
            as(shop.owner())
                    .get(path)
                    .then()
                    .body(containsString("9 Tannery Row"))
                    .body(containsString(french ? "le client le sait" : "the customer was told"))
                    .body(containsString(french ? "Tampon, devrait être 3" : "Pad, should be 3"));
            post(shop.owner(), path + "/visits", Map.of()).statusCode(303);
            Appointment now = shops.in(shop, () -> appointments.of(visit)).orElseThrow();
            assertEquals(ben, now.technicianId());
            assertEquals(LocalTime.of(9, 0), now.starts());
            assertEquals(1, shops.in(shop, () -> rings.count()));
            post(shop.owner(), path + "/visits", Map.of()).statusCode(422);
            UUID shelf = shops.in(shop, () -> places.shelf()).orElseThrow().id();
            post(shop.owner(), path + "/van", Map.of("to", shelf.toString(), "part-pad-112", "x"))
                    .statusCode(422);
            post(shop.owner(), path + "/van", Map.of("to", shelf.toString(), "part-pad-112", "2"))
                    .statusCode(303);
            assertEquals(Map.of("pad-112", BigDecimal.valueOf(2)), shops.in(shop, () -> stock.onHand(shelf)));
            assertEquals(Map.of(), shops.in(shop, () -> stock.onHand(van)));
            assertTrue(shops.in(shop, () -> places.all()).stream()
                    .noneMatch(place -> place.id().equals(van)));
            as(shop.owner())
                    .get(path)
                    .then()
                    .body(containsString(french ? "Il ne reste rien à faire" : "Nothing is left to do"));
            as(shop.office()).get(path).then().statusCode(404);
        }
    }

    @Test
    void the_api_hands_over_what_finds_a_place_and_gives_back_the_rest() {
        var shop = shops.open("CA-QC", "en");
        LocalDate day = tuesday(shop);
        UUID visit = given(shop, day, 9, false);
        UUID van = pads(shop);
        String path = shop.api("people/" + shop.technician());
        send(shop.owner(), path + "/leaving/visits", Map.of("why", "Goes to sea"))
                .statusCode(422);
        send(shop.owner(), path + "/ending", Map.of("day", day.minusDays(1).toString()))
                .statusCode(200);
        as(shop.owner())
                .get(path + "/leaving")
                .then()
                .statusCode(200)
                .body("visits[0].visit", equalTo(visit.toString()))
                .body("van", equalTo(van.toString()))
                .body("lying[0].part", equalTo("pad-112"));
        send(shop.owner(), path + "/leaving/visits", Map.of("why", "Goes to sea"))
                .statusCode(200)
                .body("[0].technician", equalTo(null));
        assertEquals(Optional.empty(), shops.in(shop, () -> appointments.of(visit)));
        UUID shelf = shops.in(shop, () -> places.shelf()).orElseThrow().id();
        send(
                        shop.owner(),
                        path + "/leaving/van",
                        Map.of(
                                "to", shelf.toString(),
                                "why", "Counted with Odile",
                                "counted", List.of(Map.of("part", "pad-112", "quantity", "3"))))
                .statusCode(200)
                .body("van", equalTo(null));
        assertEquals(Map.of("pad-112", BigDecimal.valueOf(3)), shops.in(shop, () -> stock.onHand(shelf)));
    }
}
