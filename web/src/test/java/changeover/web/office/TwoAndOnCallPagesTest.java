package changeover.web.office;

import static changeover.web.AShop.as;
import static changeover.web.AShop.post;
import static org.hamcrest.CoreMatchers.containsString;
import static org.hamcrest.CoreMatchers.equalTo;
import static org.hamcrest.CoreMatchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Holidays;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.FilledOn;
import changeover.scheduling.calls.OnCalls;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.Need;
import changeover.scheduling.dayplan.Needs;
import changeover.scheduling.dayplan.Rosters;
import changeover.scheduling.dayplan.SecondHands;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import changeover.web.AShop;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Breakdowns that two must mend, breakdowns on a Saturday, and days that were off before somebody fell ill. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class TwoAndOnCallPagesTest {

    @Inject
    AShop shops;

    @Inject
    Homes homes;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    SecondHands seconds;

    @Inject
    Needs needs;

    @Inject
    OnCalls onCalls;

    @Inject
    Rosters rosters;

    @Inject
    People people;

    @Inject
    Today today;

    private LocalDate next(AShop.Shop shop, DayOfWeek weekday) {
        return shops.in(
                shop,
                () -> today.day()
                        .plusDays(3)
                        .datesUntil(today.day().plusDays(60))
                        .filter(day -> day.getDayOfWeek() == weekday
                                && !Holidays.isHoliday("CA-QC", day, Holidays.EasterDay.GOOD_FRIDAY))
                        .findFirst()
                        .orElseThrow());
    }

    private UUID visit(AShop.Shop shop, LocalDate day, VisitKind kind) {
        return shops.in(shop, () -> {
            UUID home = homes.add(Home.Facts.at("9 Tannery Row", "Port Ambrose", "QC", null, "CA"))
                    .id();
            return visits.make(new NewVisit(home, null, kind, Window.ofDay(day), 60, null, "no heat", List.of()))
                    .id();
        });
    }

    private UUID colleague(AShop.Shop shop, String name) {
        UUID id = UUID.randomUUID();
        shops.in(shop, () -> people.add(Membership.begin(id, name, id + "@example.com", "en", Role.TECHNICIAN)));
        return id;
    }

    private void needsTwo(AShop.Shop shop, UUID visit) {
        shops.in(shop, () -> needs.write(visit, new Need(2, Set.of(), null, null), "A long ladder", new FilledOn(-1)));
    }

    private static String shown(String page) {
        var found = Pattern.compile("name=\"shown\" value=\"(\\d+)\"").matcher(page);
        assertTrue(found.find(), page);
        return found.group(1);
    }

    @Test
    void a_breakdown_for_two_is_offered_with_both_and_booked_with_both() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            LocalDate day = next(shop, DayOfWeek.TUESDAY);
            UUID heavy = visit(shop, day, VisitKind.CALL);
            needsTwo(shop, heavy);
            String path = shop.at("visits/" + heavy + "/insertion");
            as(shop.office())
                    .get(path + "?day=" + day)
                    .then()
                    .statusCode(200)
                    .body(not(containsString("name=\"shown\"")))
                    .body(containsString(french ? "Il faut être deux" : "Two must go"));
            UUID nils = colleague(shop, "Nils Ober");
            String page = as(shop.office())
                    .get(path + "?day=" + day)
                    .then()
                    .statusCode(200)
                    .body(containsString(french ? "Ils y vont à deux" : "Two go together"))
                    .body(containsString("Nils Ober"))
                    .extract()
                    .asString();
            as(shop.office())
                    .get(shop.api("visits/" + heavy + "/insertions?day=" + day))
                    .then()
                    .body("people", equalTo(2));
            post(shop.office(), path, Map.of("day", day.toString(), "shown", shown(page)))
                    .statusCode(303);
            var first = shops.in(shop, () -> appointments.of(heavy)).orElseThrow();
            var second = shops.in(shop, () -> seconds.of(heavy)).orElseThrow();
            assertEquals(Set.of(shop.technician(), nils), Set.of(first.technicianId(), second.technicianId()));
            assertEquals(first.starts(), second.starts());
        }
    }

    @Test
    void no_heat_on_a_saturday_goes_to_whoever_is_on_call_and_is_said_as_such() {
        for (String language : List.of("en", "fr")) {
            boolean french = language.equals("fr");
            var shop = shops.open("CA-QC", language);
            LocalDate saturday = next(shop, DayOfWeek.SATURDAY);
            UUID cold = visit(shop, saturday, VisitKind.CALL);
            UUID usual = visit(shop, saturday, VisitKind.EXTRA);
            String path = shop.at("visits/" + cold + "/insertion");
            as(shop.office()).get(path + "?day=" + saturday).then().body(not(containsString("name=\"shown\"")));
            shops.in(shop, () -> onCalls.give(shop.technician(), Window.ofDay(saturday)));
            String page = as(shop.office())
                    .get(path + "?day=" + saturday)
                    .then()
                    .body(containsString(french ? "de garde, hors des heures" : "on call, outside the hours"))
                    .extract()
                    .asString();
            as(shop.office())
                    .get(shop.at("visits/" + usual + "/insertion?day=" + saturday))
                    .then()
                    .body(not(containsString("name=\"shown\"")));
            as(shop.office())
                    .get(shop.api("visits/" + cold + "/insertions?day=" + saturday))
                    .then()
                    .body("ways[0].onCall", equalTo(true));
            post(shop.office(), path, Map.of("day", saturday.toString(), "shown", shown(page)))
                    .statusCode(303);
            assertEquals(
                    LocalTime.of(8, 30),
                    shops.in(shop, () -> appointments.of(cold)).orElseThrow().starts());
        }
    }

    @Test
    void a_day_that_was_off_already_can_be_shared_out_and_so_can_one_that_was() {
        var shop = shops.open("CA-QC", "en");
        LocalDate day = next(shop, DayOfWeek.TUESDAY);
        UUID nils = colleague(shop, "Nils Ober");
        UUID booked = visit(shop, day, VisitKind.EXTRA);
        shops.in(
                shop,
                () -> appointments.give(
                        booked, new Appointments.Slot(shop.technician(), day, LocalTime.of(9, 0), null)));
        shops.in(shop, () -> rosters.takeOff(shop.technician(), day, "a course"));
        String path = shop.at("season/" + day + "/absence/" + shop.technician());
        post(shop.office(), path, Map.of()).statusCode(303);
        assertEquals(
                nils,
                shops.in(shop, () -> appointments.of(booked)).orElseThrow().technicianId());
        post(shop.office(), path, Map.of()).statusCode(303);
        assertEquals(
                List.of("a course"),
                shops.in(shop, () -> rosters.daysOff(Window.ofDay(day))).stream()
                        .map(off -> off.why())
                        .toList());
    }

    @Test
    void whoever_only_went_along_is_replaced_or_said_to_be_missing() {
        var shop = shops.open("CA-QC", "en");
        LocalDate day = next(shop, DayOfWeek.TUESDAY);
        UUID nils = colleague(shop, "Nils Ober");
        UUID heavy = visit(shop, day, VisitKind.EXTRA);
        needsTwo(shop, heavy);
        shops.in(shop, () -> {
            appointments.give(heavy, new Appointments.Slot(nils, day, LocalTime.of(10, 0), null));
            seconds.give(heavy, shop.technician());
            return 0;
        });
        String path = shop.at("season/" + day + "/absence/" + shop.technician());
        as(shop.office()).get(path).then().body(containsString("wants somebody else to go along"));
        UUID cleo = colleague(shop, "Cleo Arn");
        as(shop.office()).get(path).then().body(containsString("Cleo Arn goes along instead"));
        post(shop.office(), path, Map.of()).statusCode(303);
        assertEquals(cleo, shops.in(shop, () -> seconds.of(heavy)).orElseThrow().technicianId());
        assertEquals(
                LocalTime.of(10, 0),
                shops.in(shop, () -> appointments.of(heavy)).orElseThrow().starts());
    }
}
