package changeover.deploy.demo;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.Visit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Repairs that were called for in the last weeks and are still to be billed; to one home two came on one day. */
@ApplicationScoped
class DemoRepairs {

    /** So many days before today, by the home's place among all; who comes to the same home on that day is another. */
    private static final Map<Long, List<Integer>> REPAIRS = Map.of(
            24L,
            List.of(9),
            20L,
            List.of(14),
            16L,
            List.of(21),
            11L,
            List.of(27, 27),
            6L,
            List.of(33),
            3L,
            List.of(38));

    private static final LocalTime AT = LocalTime.of(16, 15);

    @Inject
    CurrentTenant current;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    DemoCloseOut closeOut;

    void make(
            UUID tenant,
            List<DemoShop.Hand> hands,
            List<DemoHomes.Entered> homes,
            LocalDate day,
            LocalDate today,
            boolean french) {
        List<DemoShop.Hand> crew = hands.stream()
                .filter(hand -> hand.worker().role().equals("technician"))
                .toList();
        List<Integer> called = REPAIRS.getOrDefault(ChronoUnit.DAYS.between(day, today), List.of());
        for (int at = 0; at < called.size(); at++) {
            UUID home = homes.get(called.get(at) % homes.size()).id();
            DemoShop.Hand hand = crew.get(at % crew.size());
            int minutes = 45 + 15 * (called.get(at) % 4);
            current.run(tenant, hand.person(), () -> repair(home, hand, day, minutes, french));
        }
    }

    private void repair(UUID home, DemoShop.Hand hand, LocalDate day, int minutes, boolean french) {
        Visit visit = visits.make(new NewVisit(
                home,
                null,
                VisitKind.CALL,
                Window.ofDays(day, day),
                minutes,
                null,
                french ? "Ne démarre plus" : "Does not start",
                List.of()));
        appointments.give(visit.id(), new Appointments.Slot(hand.person(), day, AT, AT.plusMinutes(120)));
        closeOut.closeCall(visit.id(), hand, AT, minutes);
    }
}
