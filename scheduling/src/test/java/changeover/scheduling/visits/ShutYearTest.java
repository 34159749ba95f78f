package changeover.scheduling.visits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.agreements.OfferForecast;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.HomesShut;
import changeover.scheduling.Shop;
import changeover.scheduling.dayplan.Appointments;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A year laid out for a home that is shut for some of it. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class ShutYearTest extends MachinesTold {

    private static final LocalDate NOVEMBER = LocalDate.of(2026, 11, 16);

    @Inject
    HomesShut shut;

    @Inject
    Years laid;

    private void shut(UUID home, String from, @Nullable String until) {
        shut.shut(
                home,
                new HomesShut.Facts(
                        LocalDate.parse(from), until == null ? null : LocalDate.parse(until), true, true, null));
    }

    private Step shut(String from, String until) {
        return told -> shut(told.home(), from, until);
    }

    /** Open from 20 May to 19 October 2027; its neighbour, with the same machines, is open all year. */
    @Test
    void aYearIsLaidOutInTheOpenDaysAndTheNeighboursAsEver() {
        UUID tenant = shop.open("CA-ON");
        shop.in(tenant, () -> {
            UUID home = shop.home("ON");
            UUID neighbour = shop.home("ON");
            UUID plan = shop.plan().id();
            shut(home, "2027-01-10", "2027-05-20");
            shut(home, "2027-10-20", null);
            List<UUID> sold = List.of(shop.sell(home, plan, NOVEMBER), shop.sell(neighbour, plan, NOVEMBER));
            List<String> expected = List.of(
                    "2027-05-20 .. 2027-06-15: test-cool test-off", "2027-09-01 .. 2027-10-19: test-heat test-pad");
            assertEquals(expected, said(home));
            assertEquals(
                    List.of(
                            "2027-05-01 .. 2027-06-15: test-cool test-off",
                            "2027-09-01 .. 2027-11-15: test-heat test-pad"),
                    said(neighbour));
            YearOfHome year = years.of(home, new Window(NOVEMBER, NOVEMBER.plusYears(1)), NOVEMBER);
            assertTrue(year.visits()
                    .getFirst()
                    .tasks()
                    .getFirst()
                    .reason()
                    .en()
                    .endsWith(" The home opens again on 20\u00a0May 2027."));
            assertTrue(year.visits()
                    .getLast()
                    .tasks()
                    .getFirst()
                    .reason()
                    .fr()
                    .endsWith(" La maison est fermée à partir du 20\u00a0octobre 2027."));
            assertEquals(12, year.household().size());
            assertEquals(0, laid.plan(sold));
            assertEquals(expected, said(home));
            return home;
        });
    }

    @Test
    void theOffersForecastIsTheYearThatIsLaid() {
        UUID tenant = shop.open("CA-ON");
        OfferForecast forecast = shop.in(tenant, () -> {
            UUID home = shop.home("ON");
            shut(home, "2027-01-10", "2027-05-20");
            shut(home, "2027-10-20", null);
            var offer = offers.forHome(home, shop.plan().id(), NOVEMBER, NOVEMBER);
            return laid.forecast(home, offer.term(), offer.plan().visits(), offer.promises());
        });
        assertEquals(
                List.of(
                        Window.ofDays(LocalDate.of(2027, 5, 20), LocalDate.of(2027, 6, 15)),
                        Window.ofDays(LocalDate.of(2027, 9, 1), LocalDate.of(2027, 10, 19))),
                forecast.visits().stream().map(OfferForecast.Visit::window).toList());
        assertEquals(2, forecast.needed());
        assertEquals(List.of(), forecast.unkept());
    }

    @Test
    void aMachineThatComesIntoTheYearIsDoneWhenTheHomeIsOpen() {
        check(
                List.of(
                        shut("2026-04-01", "2026-05-20"),
                        sold(APRIL),
                        told -> assertEquals(
                                List.of(
                                        "2026-05-20 .. 2026-06-15: visit-look-over",
                                        "2026-09-01 .. 2026-11-15: visit-look-over"),
                                said(told.home())),
                        found("test-pump", "test-humidifier"),
                        read(LocalDate.of(2026, 4, 20))),
                "2026-05-20 .. 2026-06-15: test-cool test-off",
                "2026-09-01 .. 2026-11-15: test-heat test-pad");
    }

    @Test
    void aVisitThatHasItsDayStaysThoughTheHomeIsShutOnIt() {
        check(
                List.of(
                        sold(APRIL),
                        told -> appointments.give(
                                first(told.home()),
                                new Appointments.Slot(
                                        Shop.TECHNICIAN, LocalDate.of(2026, 5, 12), LocalTime.of(9, 0), null)),
                        shut("2026-05-01", "2026-05-25"),
                        found("test-pump", "test-humidifier"),
                        read(LocalDate.of(2026, 4, 20))),
                "2026-05-01 .. 2026-06-15: test-cool test-off",
                "2026-09-01 .. 2026-11-15: test-heat test-pad");
    }

    @Test
    void shutAllTheTimeTheWindowsStay() {
        check(
                List.of(
                        shut("2026-01-01", "2028-01-01"),
                        found("test-pump", "test-humidifier"),
                        sold(APRIL),
                        read(LocalDate.of(2026, 4, 2))),
                "2026-05-01 .. 2026-06-15: test-cool test-off",
                "2026-09-01 .. 2026-11-15: test-heat test-pad");
    }
}
