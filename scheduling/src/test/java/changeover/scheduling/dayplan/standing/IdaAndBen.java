package changeover.scheduling.dayplan.standing;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.scheduling.Shop;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.CalendarEntries;
import changeover.scheduling.dayplan.SecondHands;
import changeover.scheduling.dayplan.change.Absences;
import changeover.scheduling.dayplan.change.HoursTold;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;

/** A shop with two technicians, Ida and Ben, and what the tests of their hours ask it. */
abstract class IdaAndBen {

    static final LocalDate MONDAY = LocalDate.of(2027, 5, 3);
    static final UUID BEN = new UUID(7, 8);

    @Inject
    Shop shop;

    @Inject
    CurrentTenant current;

    @Inject
    People people;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    SecondHands seconds;

    @Inject
    HoursTold told;

    @Inject
    Absences absences;

    @Inject
    HourStates states;

    @Inject
    Steps steps;

    @Inject
    WordsKept words;

    @Inject
    CalendarEntries calendars;

    @Inject
    EntityManager rows;

    UUID tenant = UUID.randomUUID();
    UUID home = UUID.randomUUID();

    @BeforeEach
    void aShopWithTwo() {
        tenant = shop.open("CA-ON");
        in(() -> people.add(Membership.begin(BEN, "Ben Roe", "ben@example.com", "en", Role.TECHNICIAN)));
        in(() -> home = shop.unread("ON"));
    }

    void in(Runnable deed) {
        current.run(tenant, BEN, () -> {
            deed.run();
            return 0;
        });
    }

    UUID given(int hour) {
        return current.run(tenant, BEN, () -> {
            UUID visit = visits.make(new NewVisit(
                            home, null, VisitKind.EXTRA, Window.ofDay(MONDAY), 60, null, "the drain", List.of()))
                    .id();
            appointments.give(visit, slot(Shop.TECHNICIAN, MONDAY, hour));
            return visit;
        });
    }

    static Appointments.Slot slot(UUID technician, LocalDate day, int hour) {
        return new Appointments.Slot(technician, day, LocalTime.of(hour, 0), null);
    }
}
