package changeover.scheduling.dayplan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.Season;
import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WhichSeasonTest {

    private static final LocalDate MARCH = LocalDate.of(2027, 3, 2);
    private static final Window CHANGEOVER = days("2027-04-01", "2027-06-15");

    private static Window days(String first, String last) {
        return Window.ofDays(LocalDate.parse(first), LocalDate.parse(last));
    }

    /** The seasons of a cold climate, the first of them moved. */
    private static WhichSeason moved(MonthDay from, LocalDate tomorrow) {
        List<Season> all = new java.util.ArrayList<>(Climate.cold().seasons());
        Season cooling = all.getFirst();
        all.set(
                0,
                new Season(
                        cooling.code(),
                        cooling.nameEn(),
                        cooling.nameFr(),
                        from,
                        MonthDay.of(6, 15),
                        cooling.changeover()));
        return new WhichSeason(all, tomorrow);
    }

    private static WhichSeason as(LocalDate tomorrow) {
        return new WhichSeason(Climate.cold().seasons(), tomorrow);
    }

    @Test
    void a_window_that_begins_before_a_season_that_was_moved_still_goes_with_it_in_the_days_of_both() {
        var seasons = moved(MonthDay.of(4, 15), MARCH);
        Window season = days("2027-04-15", "2027-06-15");
        assertTrue(seasons.holds(season, CHANGEOVER));
        assertEquals(Optional.of(season), seasons.days(season, CHANGEOVER, MARCH));
        assertEquals(
                Optional.of(days("2027-05-10", "2027-06-15")),
                seasons.days(season, CHANGEOVER, LocalDate.of(2027, 5, 10)));
        assertFalse(seasons.holds(days("2026-11-16", "2027-03-31"), CHANGEOVER));
        assertFalse(seasons.holds(days("2027-05-15", "2027-09-15"), CHANGEOVER), "the warm months hold less of it");
    }

    /** Every window of the year, day by day: each goes with one season that does not hold it whole, or with those that do. */
    @Test
    void no_window_falls_between_two_seasons_or_into_two_that_do_not_hold_it_whole() {
        var seasons = moved(MonthDay.of(4, 20), MARCH);
        for (int first = 0; first < 330; first += 3) {
            for (int length : List.of(1, 9, 40, 76, 140, 300)) {
                LocalDate from = MARCH.plusDays(first);
                Window visit = new Window(from, from.plusDays(length));
                List<Window> openings = seasons.seasons().stream()
                        .flatMap(season -> season.meeting(visit).stream())
                        .distinct()
                        .toList();
                if (openings.isEmpty()) {
                    continue;
                }
                List<Window> holding = openings.stream()
                        .filter(season -> seasons.holds(season, visit))
                        .toList();
                long inPart = holding.stream()
                        .filter(season ->
                                season.common(visit).filter(visit::equals).isEmpty())
                        .count();
                assertTrue(!holding.isEmpty(), visit + " goes with none");
                assertTrue(inPart <= 1, visit + " goes with " + holding);
            }
        }
    }

    @Test
    void a_changeover_stands_before_a_shorter_season_inside_it() {
        var seasons = moved(MonthDay.of(5, 10), MARCH);
        Window visit = days("2027-05-01", "2027-06-15");
        assertTrue(seasons.holds(days("2027-05-10", "2027-06-15"), visit));
        assertTrue(as(MARCH).holds(days("2027-01-10", "2027-02-28"), days("2027-01-10", "2027-02-20")));
    }

    @Test
    void days_that_are_left_decide_once_a_season_is_over() {
        Window visit = days("2026-12-01", "2027-04-20");
        Window winter = days("2026-11-16", "2027-03-31");
        Window cooling = days("2027-04-01", "2027-06-15");
        assertTrue(as(MARCH).holds(winter, visit));
        assertFalse(as(MARCH).holds(cooling, visit));
        assertTrue(as(LocalDate.of(2027, 4, 5)).holds(cooling, visit));
        assertFalse(as(LocalDate.of(2027, 4, 5)).holds(winter, visit));
    }

    @Test
    void what_is_late_goes_with_the_season_under_way_in_its_first_days() {
        LocalDate tomorrow = LocalDate.of(2027, 5, 3);
        Window late = days("2027-01-10", "2027-02-28");
        Window cooling = days("2027-04-01", "2027-06-15");
        assertEquals(
                Optional.of(days("2027-05-05", "2027-05-18")),
                as(tomorrow).days(cooling, late, LocalDate.of(2027, 5, 5)));
        assertEquals(Optional.empty(), as(tomorrow).days(days("2027-06-16", "2027-08-31"), late, tomorrow));
        assertEquals(
                Optional.of(days("2027-06-10", "2027-06-15")),
                as(tomorrow).days(cooling, late, LocalDate.of(2027, 6, 10)));
        var gap = new WhichSeason(Climate.cold().changeovers(), LocalDate.of(2027, 7, 1));
        assertEquals(
                Optional.of(days("2027-09-01", "2027-09-14")),
                gap.days(days("2027-09-01", "2027-11-15"), late, LocalDate.of(2027, 7, 1)));
    }
}
