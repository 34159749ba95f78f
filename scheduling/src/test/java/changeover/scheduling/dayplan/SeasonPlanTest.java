package changeover.scheduling.dayplan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.HolidayChoice;
import changeover.contracts.calendar.Window;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Days for a season's visits, from rows of facts alone. */
class SeasonPlanTest {

    /** A Monday. */
    static final LocalDate MONDAY = LocalDate.of(2027, 5, 3);

    static final Window WEEK = new Window(MONDAY, MONDAY.plusWeeks(1));
    static final UUID IDA = new UUID(1, 1);
    static final UUID BEN = new UUID(1, 2);

    private static Roster roster(UUID... technicians) {
        return new Roster("CA-ON", HolidayChoice.USUAL, List.of(technicians), Map.of(), Set.of(), Map.of());
    }

    private static SeasonPlan.Technician with(UUID who, Map<String, LocalDate> tickets) {
        return new SeasonPlan.Technician(who, tickets, LocalDate.MAX);
    }

    private static SeasonPlan.Waiting visit(int number, Window window, int minutes, String... tickets) {
        return needing(number, window, minutes, new Need(1, Set.of(tickets), null, null));
    }

    private static SeasonPlan.Waiting needing(int number, Window window, int minutes, Need need) {
        return new SeasonPlan.Waiting(new UUID(2, number), window, minutes, need, "Fen Road " + number);
    }

    private static Need need(int people, String earliest, String latest) {
        return new Need(people, Set.of(), LocalTime.parse(earliest), LocalTime.parse(latest));
    }

    @Test
    void the_nearest_deadline_chooses_first_and_half_an_hour_is_left_between() {
        var late = visit(1, WEEK, 60);
        var soon = visit(2, Window.ofDay(MONDAY), 50);
        SeasonPlan plan =
                SeasonPlan.of(List.of(late, soon), List.of(with(IDA, Map.of())), roster(IDA), List.of(), MONDAY);
        assertEquals(
                List.of(
                        new SeasonPlan.Given(soon.visit(), IDA, null, MONDAY, LocalTime.of(8, 0), LocalTime.of(8, 50)),
                        new SeasonPlan.Given(
                                late.visit(), IDA, null, MONDAY, LocalTime.of(9, 30), LocalTime.of(10, 30))),
                plan.given());
    }

    @Test
    void of_two_technicians_the_one_with_less_work_that_day_goes() {
        var taken = List.of(new SeasonPlan.Taken(IDA, MONDAY, LocalTime.of(8, 0), LocalTime.of(9, 0)));
        SeasonPlan plan = SeasonPlan.of(
                List.of(visit(1, WEEK, 60)),
                List.of(with(IDA, Map.of()), with(BEN, Map.of())),
                roster(IDA, BEN),
                taken,
                MONDAY);
        assertEquals(BEN, plan.given().getFirst().technician());
    }

    @Test
    void whoever_finds_no_day_is_said_with_why() {
        var over = visit(1, new Window(MONDAY.minusDays(9), MONDAY), 60);
        var gas = visit(2, WEEK, 60, "gas");
        var long9 = visit(3, WEEK, 540);
        var weekend = visit(4, new Window(MONDAY.plusDays(5), MONDAY.plusDays(7)), 60);
        var crew = List.of(with(IDA, Map.of("gas", MONDAY.minusDays(1))));
        SeasonPlan plan = SeasonPlan.of(List.of(over, gas, long9, weekend), crew, roster(IDA), List.of(), MONDAY);
        assertTrue(plan.given().isEmpty());
        var why = new HashMap<UUID, SeasonPlan.Why>();
        plan.notPlaced().forEach(one -> why.put(one.visit(), one.why()));
        assertEquals(
                Map.of(
                        over.visit(), SeasonPlan.Why.WINDOW_OVER,
                        gas.visit(), SeasonPlan.Why.NO_TICKET,
                        long9.visit(), SeasonPlan.Why.NO_HOURS,
                        weekend.visit(), SeasonPlan.Why.NO_HOURS),
                why);
    }

    @Test
    void two_go_at_an_hour_that_both_have_and_one_who_is_alone_is_not_sent() {
        var taken = List.of(
                new SeasonPlan.Taken(IDA, MONDAY, LocalTime.of(8, 0), LocalTime.of(9, 0)),
                new SeasonPlan.Taken(BEN, MONDAY, LocalTime.of(10, 0), LocalTime.of(11, 0)));
        var heavy = needing(1, WEEK, 60, new Need(2, Set.of("gas"), null, null));
        var crew = List.of(with(IDA, Map.of()), with(BEN, Map.of("gas", LocalDate.MAX)));
        SeasonPlan plan = SeasonPlan.of(List.of(heavy), crew, roster(IDA, BEN), taken, MONDAY);
        assertEquals(
                List.of(new SeasonPlan.Given(
                        heavy.visit(), BEN, IDA, MONDAY, LocalTime.of(11, 30), LocalTime.of(12, 30))),
                plan.given());
        SeasonPlan alone = SeasonPlan.of(
                List.of(heavy), List.of(with(BEN, Map.of("gas", LocalDate.MAX))), roster(BEN), List.of(), MONDAY);
        assertEquals(List.of(new SeasonPlan.NotPlaced(heavy.visit(), SeasonPlan.Why.NO_SECOND)), alone.notPlaced());
    }

    @Test
    void a_visit_that_needs_a_time_of_day_begins_in_it_or_finds_no_day() {
        var crew = List.of(with(IDA, Map.of()));
        var afternoon = needing(1, WEEK, 60, need(1, "13:00", "14:00"));
        var next = needing(2, WEEK, 60, need(1, "13:00", "14:00"));
        var night = needing(3, WEEK, 60, need(1, "19:00", "20:00"));
        SeasonPlan plan = SeasonPlan.of(List.of(afternoon, next, night), crew, roster(IDA), List.of(), MONDAY);
        assertEquals(
                List.of(MONDAY + " 13:00", MONDAY.plusDays(1) + " 13:00"),
                plan.given().stream().map(one -> one.day() + " " + one.starts()).toList());
        assertEquals(List.of(new SeasonPlan.NotPlaced(night.visit(), SeasonPlan.Why.NO_HOURS)), plan.notPlaced());
    }

    @Test
    void nobody_is_sent_after_their_last_day() {
        var crew = List.of(new SeasonPlan.Technician(IDA, Map.of(), MONDAY.minusDays(1)));
        assertTrue(SeasonPlan.of(List.of(visit(1, WEEK, 60)), crew, roster(IDA), List.of(), MONDAY)
                .given()
                .isEmpty());
    }

    @Test
    void no_two_at_once_inside_every_window_and_the_same_for_any_order_of_the_rows() {
        var random = new Random(27);
        var waiting = new ArrayList<>(IntStream.range(0, 300)
                .mapToObj(number -> {
                    LocalDate from = MONDAY.plusDays(random.nextInt(40));
                    return visit(
                            number, new Window(from, from.plusDays(1 + random.nextInt(30))), 20 + random.nextInt(90));
                })
                .toList());
        var crew = List.of(with(IDA, Map.of()), with(BEN, Map.of()));
        var taken = List.of(new SeasonPlan.Taken(IDA, MONDAY, LocalTime.of(10, 7), LocalTime.of(11, 7)));
        SeasonPlan plan = SeasonPlan.of(waiting, crew, roster(IDA, BEN), taken, MONDAY);
        assertEquals(300, plan.given().size() + plan.notPlaced().size());
        Collections.shuffle(waiting, random);
        assertEquals(plan, SeasonPlan.of(waiting, crew, roster(BEN, IDA), taken, MONDAY));
        var windows = new HashMap<UUID, Window>();
        waiting.forEach(one -> windows.put(one.visit(), one.window()));
        var all = new ArrayList<>(taken);
        for (SeasonPlan.Given given : plan.given()) {
            assertTrue(windows.get(given.visit()).contains(given.day()));
            assertTrue(all.stream()
                    .filter(one -> one.technician().equals(given.technician())
                            && one.day().equals(given.day()))
                    .allMatch(one -> !given.starts().isBefore(one.ends().plusMinutes(Diary.BETWEEN))
                            || !one.starts().isBefore(given.ends().plusMinutes(Diary.BETWEEN))));
            all.add(new SeasonPlan.Taken(given.technician(), given.day(), given.starts(), given.ends()));
        }
    }

    /** A spring of ten thousand visits and twelve technicians, most of which find no hours: still an answer at once. */
    @Test
    void a_whole_season_is_answered_in_seconds() {
        Window spring = Window.ofDays(LocalDate.of(2027, 4, 1), LocalDate.of(2027, 6, 15));
        var waiting = IntStream.range(0, 10_000)
                .mapToObj(number -> visit(number, spring, 60))
                .toList();
        var crew = IntStream.range(0, 12)
                .mapToObj(number -> with(new UUID(1, number), Map.of()))
                .toList();
        var roster = roster(crew.stream().map(SeasonPlan.Technician::id).toArray(UUID[]::new));
        SeasonPlan plan =
                assertTimeout(Duration.ofSeconds(20), () -> SeasonPlan.of(waiting, crew, roster, List.of(), MONDAY));
        assertEquals(10_000, plan.given().size() + plan.notPlaced().size());
        assertTrue(plan.given().size() > 1_000);
    }
}
