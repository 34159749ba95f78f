package changeover.scheduling.dayplan.standing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import changeover.contracts.PostgresForTests;
import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.contracts.words.Constraints;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.scheduling.Shop;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.CalendarEntries;
import changeover.scheduling.dayplan.CalendarEntry;
import changeover.scheduling.dayplan.Moving;
import changeover.scheduling.dayplan.SecondHands;
import changeover.scheduling.dayplan.change.Absences;
import changeover.scheduling.dayplan.change.HoursTold;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What becomes of the hours that visits had, and how the business kept its word. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HoursThatMoveTest {

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

    private void in(Runnable deed) {
        current.run(tenant, BEN, () -> {
            deed.run();
            return 0;
        });
    }

    private UUID given(int hour) {
        return current.run(tenant, BEN, () -> {
            UUID visit = visits.make(new NewVisit(
                            home, null, VisitKind.EXTRA, Window.ofDay(MONDAY), 60, null, "the drain", List.of()))
                    .id();
            appointments.give(visit, slot(Shop.TECHNICIAN, MONDAY, hour));
            return visit;
        });
    }

    private static Appointments.Slot slot(UUID technician, LocalDate day, int hour) {
        return new Appointments.Slot(technician, day, LocalTime.of(hour, 0), null);
    }

    private HourState state(UUID visit) {
        return shop.in(tenant, () -> states.of(visit));
    }

    private String story(UUID visit) {
        return shop.in(tenant, () -> steps.of(visit)).stream()
                .map(step -> step.kind() + " " + hour(step.was()) + ">" + hour(step.now()) + " " + step.askedBy() + " "
                        + step.why() + " " + step.by())
                .collect(Collectors.joining("\n"));
    }

    private static String hour(Step.Hour hour) {
        return hour == null ? "" : hour.day() + " " + hour.starts() + " " + hour.technician();
    }

    private String calendar(UUID person) {
        return shop.in(tenant, () -> calendars.ofTechnician(person, MONDAY)).stream()
                .map(HoursThatMoveTest::entry)
                .collect(Collectors.joining("\n"));
    }

    private static String entry(CalendarEntry one) {
        return one.sequence() + " " + one.starts() + (one.certain() ? " certain" : "")
                + (one.goesAlong() ? " along" : "") + (one.cancelled() ? " cancelled" : "") + " " + one.technician();
    }

    @Test
    void a_told_hour_is_confirmed_and_moves_with_its_reason_only() {
        UUID visit = given(9);
        assertEquals(HourState.PROPOSED, state(visit));
        in(() -> appointments.give(visit, slot(Shop.TECHNICIAN, MONDAY, 10)));
        in(() -> told.tell(visit));
        assertEquals(HourState.CONFIRMED, state(visit));
        Refused refused = assertThrows(
                Refused.class, () -> in(() -> appointments.give(visit, slot(Shop.TECHNICIAN, MONDAY, 11))));
        assertEquals("appointment.told-moves-for-a-reason", refused.first().code());
        assertThrows(Refused.class, () -> in(() -> appointments.takeOff(visit)));
        in(() -> appointments.give(visit, slot(BEN, MONDAY, 10)));
        assertEquals(HourState.CONFIRMED, state(visit));
        in(() -> appointments.give(
                visit, slot(BEN, MONDAY.plusDays(1), 8), new Moving(Moving.By.CUSTOMER, "They are away")));
        assertEquals(HourState.PROPOSED, state(visit));
        in(() -> appointments.takeOff(visit));
        assertEquals(HourState.WITHOUT_DAY, state(visit));
        assertEquals("""
                MOVED 2027-05-03 09:00 Ida Roe>2027-05-03 10:00 Ida Roe null null Ben Roe
                TOLD >2027-05-03 10:00 null null null Ben Roe
                MOVED 2027-05-03 10:00 Ida Roe>2027-05-03 10:00 Ben Roe null null Ben Roe
                MOVED 2027-05-03 10:00 Ben Roe>2027-05-04 08:00 Ben Roe CUSTOMER They are away Ben Roe
                MOVED 2027-05-04 08:00 Ben Roe> null null Ben Roe""", story(visit));
    }

    @Test
    void the_database_keeps_a_told_hour_whoever_writes() {
        UUID visit = given(9);
        in(() -> told.tell(visit));
        for (String sql : List.of(
                "update appointment set starts = '11:00', ends = '12:00' where visit_id = :visit",
                "update appointment set day = day + 1 where visit_id = :visit",
                "delete from appointment where visit_id = :visit")) {
            var failure = assertThrows(
                    Exception.class,
                    () -> in(() -> rows.createNativeQuery(sql)
                            .setParameter("visit", visit)
                            .executeUpdate()));
            assertEquals(
                    "constraint.a_told_hour_moves_for_a_reason",
                    Constraints.refusal(failure).map(Refusal::code).orElseThrow());
        }
        in(() -> visits.notKept(visit, MONDAY, "The van broke down"));
        assertEquals(HourState.NOT_KEPT, state(visit));
        assertEquals("""
                TOLD >2027-05-03 09:00 null null null Ben Roe
                NOT_KEPT >2027-05-03 null null null The van broke down Ben Roe""", story(visit));
    }

    @Test
    void the_word_of_a_season_is_counted_and_what_was_not_kept_is_named() {
        UUID ours = given(8);
        UUID theirs = given(9);
        UUID lost = given(10);
        UUID shut = given(11);
        in(() -> told.tellAll(MONDAY));
        assertEquals(
                "appointment.nobody-to-tell",
                assertThrows(Refused.class, () -> in(() -> told.tellAll(MONDAY)))
                        .first()
                        .code());
        in(() -> appointments.give(ours, slot(BEN, MONDAY, 13), new Moving(Moving.By.US, "A gas alarm came first")));
        in(() -> appointments.takeOff(theirs, new Moving(Moving.By.CUSTOMER, "They are away")));
        in(() -> appointments.give(lost, slot(BEN, MONDAY, 15), new Moving(Moving.By.US, "The van broke down")));
        in(() -> visits.notKept(lost, MONDAY, "The van broke down again"));
        in(() -> visits.noAccess(shut, MONDAY, "Nobody opened"));
        in(() -> visits.close(ours, MONDAY));
        Window day = Window.ofDay(MONDAY);
        assertEquals(new WordKept(1, 1, 1, 1, 1), shop.in(tenant, () -> words.over(day)));
        assertEquals(
                List.of("The van broke down again"),
                shop.in(tenant, () -> words.notKept(day, 10)).stream()
                        .map(WordsKept.NotKept::why)
                        .toList());
        assertEquals(new WordKept(0, 0, 0, 0, 0), shop.in(tenant, () -> words.over(Window.ofDay(MONDAY.plusDays(1)))));
        UUID other = shop.open("CA-ON");
        assertEquals(new WordKept(0, 0, 0, 0, 0), shop.in(other, () -> words.over(day)));
        assertEquals(List.of(), shop.in(other, () -> steps.of(lost)));
    }

    @Test
    void the_day_of_somebody_ill_moves_told_hours_with_that_reason() {
        UUID keeps = given(9);
        UUID goes = given(11);
        UUID bens = given(15);
        in(() -> appointments.give(bens, new Appointments.Slot(BEN, MONDAY, LocalTime.of(11, 0), LocalTime.of(16, 0))));
        in(() -> told.tellAll(MONDAY));
        in(() -> absences.share(MONDAY, Shop.TECHNICIAN, "Ill"));
        assertEquals(HourState.CONFIRMED, state(keeps));
        assertEquals(HourState.WITHOUT_DAY, state(goes));
        assertEquals("""
                TOLD >2027-05-03 11:00 null null null Ben Roe
                MOVED 2027-05-03 11:00 Ida Roe> US Ill Ben Roe""", story(goes));
    }

    @Test
    void calendars_are_told_what_is_certain_and_who_goes_along() {
        UUID visit = given(9);
        assertEquals("0 09:00 Ida Roe", calendar(Shop.TECHNICIAN));
        in(() -> seconds.give(visit, BEN));
        assertEquals("1 09:00 along Ida Roe", calendar(BEN));
        in(() -> told.tell(visit));
        in(() -> told.tell(visit));
        assertEquals("2 09:00 certain Ida Roe", calendar(Shop.TECHNICIAN));
        assertEquals("2 09:00 certain along Ida Roe", calendar(BEN));
        in(() -> appointments.give(
                visit, slot(Shop.TECHNICIAN, MONDAY, 13), new Moving(Moving.By.CUSTOMER, "They are away")));
        assertEquals("3 13:00 Ida Roe", calendar(Shop.TECHNICIAN));
        assertEquals("4 13:00 along Ida Roe", calendar(BEN));
        assertEquals(
                List.of("3 13:00 Ida Roe"),
                shop.in(tenant, () -> calendars.ofHome(home, MONDAY)).stream()
                        .map(HoursThatMoveTest::entry)
                        .toList());
        in(() -> seconds.give(visit, null));
        assertEquals("5 13:00 along cancelled Ida Roe", calendar(BEN));
        in(() -> appointments.takeOff(visit));
        assertEquals("6 13:00 cancelled Ida Roe", calendar(Shop.TECHNICIAN));
    }
}
