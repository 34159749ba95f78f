package changeover.web.api;

import changeover.contracts.calendar.Holidays;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.contracts.tenants.Today;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import changeover.web.AShop;
import jakarta.inject.Inject;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;

/** A shop with a technician and visits on a Tuesday to come; no home is on a map, so every road is half an hour. */
abstract class ATuesday {

    @Inject
    AShop shops;

    @Inject
    Homes homes;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    People people;

    @Inject
    Today today;

    LocalDate tuesday(AShop.Shop shop) {
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

    UUID visit(AShop.Shop shop, LocalDate day) {
        return shops.in(shop, () -> {
            UUID home = homes.add(Home.Facts.at("9 Tannery Row", "Port Ambrose", "QC", null, "CA"))
                    .id();
            return visits.make(new NewVisit(
                            home, null, VisitKind.EXTRA, Window.ofDay(day), 60, null, "look at the drain", List.of()))
                    .id();
        });
    }

    UUID given(AShop.Shop shop, LocalDate day, int hour) {
        UUID visit = visit(shop, day);
        shops.in(
                shop,
                () -> appointments.give(
                        visit, new Appointments.Slot(shop.technician(), day, LocalTime.of(hour, 0), null)));
        return visit;
    }

    UUID nils(AShop.Shop shop) {
        UUID nils = UUID.randomUUID();
        shops.in(
                shop,
                () -> people.add(
                        Membership.begin(nils, "Nils Ober", shop.slug() + "-n@example.com", "en", Role.TECHNICIAN)));
        return nils;
    }
}
