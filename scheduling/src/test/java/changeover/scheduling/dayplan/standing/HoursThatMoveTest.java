package changeover.scheduling.dayplan.standing;

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
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.Moving;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What becomes of the hours that visits had, and how the business kept its word. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class HoursThatMoveTest extends IdaAndBen {

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
    void an_hour_that_moved_away_and_came_back_is_told_only_if_it_was_told_since() {
        UUID visit = given(9);
        in(() -> told.tell(visit));
        in(() -> appointments.give(
                visit, slot(Shop.TECHNICIAN, MONDAY, 11), new Moving(Moving.By.CUSTOMER, "They sleep in")));
        assertEquals(HourState.PROPOSED, state(visit));
        in(() -> told.tell(visit));
        assertEquals(HourState.CONFIRMED, state(visit));
        in(() -> appointments.give(
                visit, slot(Shop.TECHNICIAN, MONDAY, 9), new Moving(Moving.By.US, "A gas alarm came first")));
        assertEquals(HourState.PROPOSED, state(visit), "they heard of eleven last");
        assertFalse(certain(visit));
        in(() -> appointments.give(visit, slot(Shop.TECHNICIAN, MONDAY, 10)));
        in(() -> appointments.give(visit, slot(Shop.TECHNICIAN, MONDAY, 9)));
        assertEquals(HourState.PROPOSED, state(visit));
        in(() -> told.tell(visit));
        in(() -> told.tell(visit));
        assertEquals(HourState.CONFIRMED, state(visit));
        assertTrue(certain(visit));
        assertThrows(Refused.class, () -> in(() -> appointments.give(visit, slot(Shop.TECHNICIAN, MONDAY, 12))));
        assertEquals(
                3, story(visit).lines().filter(line -> line.startsWith("TOLD")).count());
        assertThrows(
                Exception.class,
                () -> in(() -> rows.createNativeQuery("delete from appointment where visit_id = :visit")
                        .setParameter("visit", visit)
                        .executeUpdate()));
    }

    private boolean certain(UUID visit) {
        return shop.in(tenant, () -> (Boolean) rows.createNativeQuery(
                        "select confirmed from calendar_entry where visit_id = :visit and not cancelled", Boolean.class)
                .setParameter("visit", visit)
                .getSingleResult());
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
}
