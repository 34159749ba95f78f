package changeover.scheduling.dayplan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.words.Constraints;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.scheduling.Shop;
import changeover.scheduling.visits.Visits;
import changeover.scheduling.visits.YearOfHome;
import changeover.scheduling.visits.YearOfHome.Standing;
import changeover.scheduling.visits.YearsOfHomes;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class DaysGivenTest {

    static final LocalDate SOLD = LocalDate.of(2026, 11, 16);
    static final LocalDate INSIDE = LocalDate.of(2027, 5, 12);

    @Inject
    Shop shop;

    @Inject
    Appointments appointments;

    @Inject
    DayPlans dayPlans;

    @Inject
    Due due;

    @Inject
    SeasonLoads loads;

    @Inject
    Rosters rosters;

    @Inject
    Visits visits;

    @Inject
    YearsOfHomes years;

    UUID tenant = UUID.randomUUID();
    UUID home = UUID.randomUUID();
    List<UUID> going = List.of();

    @BeforeEach
    void aYearIsSold() {
        tenant = shop.open("CA-ON");
        home = shop.in(tenant, () -> {
            UUID id = shop.home("ON");
            shop.sell(id, shop.plan().id(), SOLD);
            return id;
        });
        going = year(SOLD).visits().stream().map(YearOfHome.Going::visitId).toList();
    }

    private YearOfHome year(LocalDate today) {
        return shop.in(tenant, () -> years.of(home, new Window(SOLD, SOLD.plusYears(1)), today));
    }

    private Appointments.Given give(UUID visit, LocalDate day, int hour) {
        return shop.in(
                tenant,
                () -> appointments.give(
                        visit, new Appointments.Slot(Shop.TECHNICIAN, day, LocalTime.of(hour, 0), null)));
    }

    @Test
    void a_visit_gets_a_day_and_stands_in_the_technicians_plan() {
        Appointments.Given given = give(going.getFirst(), INSIDE, 9);
        assertEquals(List.of(), given.notes());
        assertEquals(LocalTime.of(9, 50), given.appointment().ends());
        DayPlan day = shop.in(tenant, () -> dayPlans.of(Shop.TECHNICIAN, INSIDE));
        assertEquals("Ida Roe", day.technician());
        assertEquals(
                List.of(going.getFirst()),
                day.stops().stream().map(DayPlan.Stop::visitId).toList());
        assertEquals(2, day.stops().getFirst().tasks());
        assertTrue(day.stops().getFirst().home().endsWith("Port Ambrose"));
        assertEquals(Standing.HAS_A_DAY, year(SOLD).visits().getFirst().standing());
    }

    @Test
    void the_database_refuses_to_send_a_technician_to_two_homes_at_once() {
        give(going.getFirst(), INSIDE, 9);
        var failure = assertThrows(Exception.class, () -> give(going.getLast(), INSIDE, 9));
        assertEquals(
                "constraint.technician_is_elsewhere",
                Constraints.refusal(failure).map(Refusal::code).orElseThrow());
        give(going.getLast(), INSIDE, 10);
    }

    @Test
    void a_day_outside_the_window_is_allowed_and_said() {
        Appointments.Given given = give(going.getFirst(), LocalDate.of(2027, 2, 13), 9);
        assertEquals(2, given.notes().size());
        assertEquals(
                "This day is outside the visit’s window, 1 May 2027 to 15 June 2027.",
                given.notes().getFirst().en().replace('\u00a0', ' '));
        assertEquals(
                "Ida Roe does not work on that day.", given.notes().getLast().en());
    }

    @Test
    void a_cancelled_visit_gives_its_hours_back_and_takes_no_day_any_more() {
        give(going.getFirst(), INSIDE, 9);
        shop.in(tenant, () -> {
            visits.cancel(going.getFirst(), INSIDE, "sold the house");
            return 0;
        });
        assertFalse(shop.in(tenant, () -> appointments.isOf(going.getFirst(), Shop.TECHNICIAN)));
        give(going.getLast(), INSIDE, 9);
        Refused refused = assertThrows(Refused.class, () -> give(going.getFirst(), INSIDE, 14));
        assertEquals("visit.has-ended", refused.first().code());
        assertEquals(
                "visit.ending-says-why",
                assertThrows(
                                Refused.class,
                                () -> shop.in(tenant, () -> {
                                    visits.notKept(going.getLast(), INSIDE, " ");
                                    return 0;
                                }))
                        .first()
                        .code());
    }

    @Test
    void what_waits_is_counted_and_listed() {
        LocalDate today = LocalDate.of(2027, 5, 31);
        assertEquals(new DueCounts(0, 1, 0, 0, 0, 7), shop.in(tenant, () -> due.counts(today)));
        assertEquals(
                List.of(going.getFirst()),
                shop.in(tenant, () -> due.withoutDay(today, 0, 10)).stream()
                        .map(DueVisit::visitId)
                        .toList());
        LocalDate after = LocalDate.of(2027, 6, 16);
        List<DueVisit> late = shop.in(tenant, () -> due.late(after, 0, 10));
        assertEquals(
                List.of(going.getFirst()), late.stream().map(DueVisit::visitId).toList());
        assertTrue(late.getFirst().customer().startsWith("Mara Quill"));
        assertEquals("Confort", late.getFirst().plan().fr());
        assertEquals(Standing.LATE, year(after).visits().getFirst().standing());
        assertEquals(
                2,
                shop.in(tenant, () -> due.open(new Window(SOLD, SOLD.plusYears(1)), SOLD, 0, 10))
                        .size());
    }

    @Test
    void the_weeks_hold_the_minutes_of_all_visits_against_the_crews_hours() {
        give(going.getFirst(), INSIDE, 9);
        SeasonLoad load =
                shop.in(tenant, () -> loads.of(new Window(LocalDate.of(2027, 5, 3), LocalDate.of(2027, 11, 22)), SOLD));
        assertEquals(
                50, load.weeks().stream().mapToInt(SeasonLoad.Week::withDay).sum());
        assertEquals(
                65, load.weeks().stream().mapToInt(SeasonLoad.Week::withoutDay).sum());
        assertEquals(5 * 8 * 60, load.weeks().getFirst().capacity());
        // 24 May 2027, Victoria Day, is not worked.
        assertEquals(4 * 8 * 60, load.weeks().get(3).capacity());
        shop.in(tenant, () -> {
            rosters.write(
                    Shop.TECHNICIAN,
                    List.of(new Roster.Hours(DayOfWeek.WEDNESDAY, LocalTime.of(7, 0), LocalTime.of(17, 0))));
            rosters.takeOff(null, LocalDate.of(2027, 5, 5), "stock-taking");
            return 0;
        });
        SeasonLoad after =
                shop.in(tenant, () -> loads.of(new Window(LocalDate.of(2027, 5, 3), LocalDate.of(2027, 5, 17)), SOLD));
        assertEquals(
                List.of(0, 600),
                after.weeks().stream().map(SeasonLoad.Week::capacity).toList());
    }
}
