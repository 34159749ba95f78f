package changeover.scheduling.dayplan.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.Window;
import changeover.scheduling.dayplan.season.SeasonAnswer.Why;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** A season from rows of facts alone, judged by a checker that knows nothing of the search. */
class SearchTest {

    private static final LocalDate MONDAY = InventedSeasons.MONDAY;
    private static final Window WEEK = new Window(MONDAY, MONDAY.plusDays(5));
    private static final UUID IDA = new UUID(1, 1);
    private static final UUID BEN = new UUID(1, 2);
    private static final boolean DEEP = Boolean.getBoolean("changeover.deep");

    static Wanted visit(int number, Window window, int minutes, int people, String... tickets) {
        return new Wanted(
                new UUID(2, number), window, minutes, Set.of(tickets), people, 0, Wanted.MIDNIGHT, Roads.UNKNOWN);
    }

    /** A week of days from eight to four, each road half an hour. */
    static SeasonCase week(List<Wanted> wanted, Hand... crew) {
        var shifts = new ArrayList<Shift>();
        var open = new HashMap<LocalDate, SeasonCase.Open>();
        WEEK.from().datesUntil(WEEK.until()).forEach(day -> {
            open.put(day, new SeasonCase.Open(480, 960));
            for (Hand hand : crew) {
                shifts.add(new Shift(hand.id(), day, 480, 960, List.of()));
            }
        });
        return new SeasonCase(wanted, List.of(crew), shifts, Roads.of(null), open, Roads.UNKNOWN, MONDAY);
    }

    static Hand hand(UUID id, String... tickets) {
        var held = new HashMap<String, LocalDate>();
        for (String kind : tickets) {
            held.put(kind, LocalDate.MAX);
        }
        return new Hand(id, held, Roads.UNKNOWN, 30, false);
    }

    static SeasonAnswer answer(SeasonCase asked) {
        var search = new Search(asked);
        search.begin();
        while (!search.isOver()) {
            search.search(100);
        }
        SeasonAnswer answer = search.answer();
        SeasonChecked.check(asked, answer);
        return answer;
    }

    @Test
    void every_promise_that_can_be_kept_is_kept() {
        SeasonAnswer answer = answer(
                week(List.of(visit(1, WEEK, 60, 1), visit(2, Window.ofDay(MONDAY), 60, 1, "gas")), hand(IDA, "gas")));
        assertTrue(answer.allKept());
        assertEquals(0, answer.technicianDays());
    }

    @Test
    void what_cannot_be_kept_is_named_with_its_reason() {
        var over = visit(1, new Window(MONDAY.minusDays(9), MONDAY), 60, 1);
        var gas = visit(2, WEEK, 60, 1, "gas");
        var weekend = visit(3, Window.ofDay(MONDAY.plusDays(5)), 60, 1);
        var tooLong = visit(4, WEEK, 430, 1);
        var two = visit(5, WEEK, 60, 2);
        SeasonAnswer answer = answer(week(List.of(over, gas, weekend, tooLong, two), hand(IDA)));
        var why = new HashMap<UUID, Why>();
        answer.unkept().forEach(one -> why.put(one.visit(), one.why()));
        assertEquals(
                Map.of(
                        over.visit(), Why.WINDOW_OVER,
                        gas.visit(), Why.NO_TICKET,
                        weekend.visit(), Why.NOBODY_WORKS,
                        tooLong.visit(), Why.TOO_LONG,
                        two.visit(), Why.NO_SECOND),
                why);
        assertEquals(List.of(new SeasonAnswer.MoreTickets(Set.of("gas"), List.of(gas.visit()))), answer.moreTickets());
        assertEquals(2, answer.technicianDays(), "two technicians for the visit that two make");
    }

    /** Nine visits of four hours and ten minutes: one a day for each technician, so a week of one keeps five. */
    @Test
    void the_days_that_would_keep_the_others_are_counted_and_with_them_all_are_kept() {
        var wanted = new ArrayList<Wanted>();
        for (int number = 0; number < 9; number++) {
            wanted.add(visit(number, WEEK, 250, 1));
        }
        SeasonAnswer answer = answer(week(wanted, hand(IDA)));
        assertEquals(5, answer.kept().size());
        assertEquals(4, answer.technicianDays());
        assertTrue(answer(week(wanted, hand(IDA), hand(BEN))).allKept());
    }

    @Test
    void two_go_together_at_one_hour_and_whoever_leads_holds_the_ticket() {
        SeasonAnswer answer = answer(week(List.of(visit(1, WEEK, 60, 2, "gas")), hand(IDA), hand(BEN, "gas")));
        SeasonAnswer.Kept kept = answer.kept().getFirst();
        assertEquals(BEN, kept.technician());
        assertEquals(IDA, kept.second());
    }

    @Test
    void any_season_is_driven_as_told_and_is_never_worse_than_the_first_answer() {
        for (int number = 1; number <= (DEEP ? 200 : 12); number++) {
            SeasonCase asked =
                    InventedSeasons.town(number, 20 + 7 * (number % 9), 1 + number % 3, 5 + 3 * (number % 4));
            var greedy = new Search(asked);
            greedy.begin();
            SeasonAnswer first = greedy.answer();
            SeasonChecked.check(asked, first);
            SeasonAnswer last = answer(asked);
            assertTrue(last.kept().size() >= first.kept().size(), "season " + number);
        }
    }

    @Test
    void the_order_of_the_rows_changes_nothing() {
        SeasonCase asked = InventedSeasons.town(77, 60, 3, 10);
        var wanted = new ArrayList<>(asked.wanted());
        var shifts = new ArrayList<>(asked.shifts());
        Collections.shuffle(wanted, new Random(1));
        Collections.shuffle(shifts, new Random(2));
        assertEquals(
                answer(asked),
                answer(new SeasonCase(
                        wanted, asked.hands(), shifts, asked.roads(), asked.open(), asked.shop(), asked.first())));
    }

    /** Whoever goes on from an answer that was kept comes to what they would have come to without a break. */
    @Test
    void a_search_that_was_cut_off_goes_on_where_it_stood() {
        SeasonCase asked = InventedSeasons.town(5, 80, 2, 10);
        var whole = new Search(asked);
        whole.begin();
        var half = new Search(asked);
        half.begin();
        for (int steps = 0; steps < 6; steps++) {
            whole.search(100);
            half.search(100);
        }
        var again = new Search(asked);
        again.goOn(half.answer().kept(), half.rounds());
        assertEquals(half.without(), again.without());
        while (!whole.isOver()) {
            whole.search(100);
            again.search(100);
        }
        assertTrue(again.isOver());
        SeasonChecked.check(asked, again.answer());
        assertTrue(again.without() <= half.without());
    }

    /** Only a full run takes the whole size; a short one takes a fifth of it. */
    @Test
    void a_thousand_visits_on_three_technicians_and_sixty_days_are_answered_within_a_minute() {
        SeasonCase asked = InventedSeasons.town(60, DEEP ? 1000 : 200, 3, DEEP ? 60 : 12);
        SeasonAnswer answer = assertTimeout(Duration.ofSeconds(60), () -> answer(asked));
        assertTrue(answer.kept().size() > asked.wanted().size() / 2);
    }
}
