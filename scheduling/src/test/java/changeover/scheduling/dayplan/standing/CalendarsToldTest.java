package changeover.scheduling.dayplan.standing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.PostgresForTests;
import changeover.scheduling.Shop;
import changeover.scheduling.dayplan.CalendarEntry;
import changeover.scheduling.dayplan.Moving;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What calendars are told of hours that are certain, that move, and of whoever goes along. */
@QuarkusTest
@QuarkusTestResource(PostgresForTests.class)
class CalendarsToldTest extends IdaAndBen {

    private String calendar(UUID person) {
        return shop.in(tenant, () -> calendars.ofTechnician(person, MONDAY)).stream()
                .map(CalendarsToldTest::entry)
                .collect(Collectors.joining("\n"));
    }

    private static String entry(CalendarEntry one) {
        return one.sequence() + " " + one.starts() + (one.certain() ? " certain" : "")
                + (one.goesAlong() ? " along" : "") + (one.cancelled() ? " cancelled" : "") + " " + one.technician();
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
                        .map(CalendarsToldTest::entry)
                        .toList());
        in(() -> seconds.give(visit, null));
        assertEquals("5 13:00 along cancelled Ida Roe", calendar(BEN));
        in(() -> appointments.takeOff(visit));
        assertEquals("6 13:00 cancelled Ida Roe", calendar(Shop.TECHNICIAN));
    }
}
