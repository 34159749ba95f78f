package changeover.scheduling.calls;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Ada, Ben and Cleo take turns from Monday, 4 January 2027; every answer written by hand. */
class OnCallRoundTest {

    private static final LocalDate MONDAY = LocalDate.of(2027, 1, 4);
    private static final UUID ADA = new UUID(1, 1);
    private static final UUID BEN = new UUID(1, 2);
    private static final UUID CLEO = new UUID(1, 3);
    private static final Map<UUID, String> NAMES = Map.of(ADA, "Ada", BEN, "Ben", CLEO, "Cleo");

    /** @param bens last day with the business */
    private static void check(OnCallRound.Span span, int days, LocalDate bens, List<Window> taken, String... expected) {
        OnCallRound round = new OnCallRound(List.of(ADA, BEN, CLEO), span, new Window(MONDAY, MONDAY.plusDays(days)));
        OnCallRound.Laid laid = round.turns((person, day) -> !person.equals(BEN) || !day.isAfter(bens), taken);
        List<String> said = new ArrayList<>();
        laid.turns().forEach(turn -> said.add(NAMES.get(turn.person()) + " " + said(turn.days())));
        laid.open().forEach(open -> said.add("nobody " + said(open)));
        assertEquals(List.of(expected), said);
    }

    private static String said(Window days) {
        return days.from().toString().substring(5) + ".."
                + days.last().toString().substring(5);
    }

    @Test
    void byTheWeekEachFollowsTheOtherAndTheLastWeekMayBeShort() {
        check(
                OnCallRound.Span.WEEK,
                31,
                LocalDate.MAX,
                List.of(),
                "Ada 01-04..01-10",
                "Ben 01-11..01-17",
                "Cleo 01-18..01-24",
                "Ada 01-25..01-31",
                "Ben 02-01..02-03");
    }

    @Test
    void byTheDay() {
        check(
                OnCallRound.Span.DAY,
                4,
                LocalDate.MAX,
                List.of(),
                "Ada 01-04..01-04",
                "Ben 01-05..01-05",
                "Cleo 01-06..01-06",
                "Ada 01-07..01-07");
    }

    @Test
    void whoeverHasLeftIsPassedOver() {
        check(
                OnCallRound.Span.WEEK,
                21,
                LocalDate.of(2027, 1, 16),
                List.of(),
                "Ada 01-04..01-10",
                "Cleo 01-11..01-17",
                "Ada 01-18..01-24");
    }

    @Test
    void daysThatHaveSomebodyStayTheirsAndUseUpNobodysTurn() {
        check(
                OnCallRound.Span.WEEK,
                28,
                LocalDate.MAX,
                List.of(
                        Window.ofDays(LocalDate.of(2027, 1, 11), LocalDate.of(2027, 1, 17)),
                        Window.ofDays(LocalDate.of(2027, 1, 20), LocalDate.of(2027, 1, 21))),
                "Ada 01-04..01-10",
                "Ben 01-18..01-19",
                "Ben 01-22..01-24",
                "Cleo 01-25..01-31");
    }

    @Test
    void whatNobodyCanTakeIsNamed() {
        OnCallRound alone =
                new OnCallRound(List.of(BEN), OnCallRound.Span.WEEK, new Window(MONDAY, MONDAY.plusDays(14)));
        OnCallRound.Laid laid = alone.turns((_, day) -> day.isBefore(MONDAY.plusDays(7)), List.of());
        assertEquals(1, laid.turns().size());
        assertEquals(List.of(new Window(MONDAY.plusDays(7), MONDAY.plusDays(14))), laid.open());
    }
}
