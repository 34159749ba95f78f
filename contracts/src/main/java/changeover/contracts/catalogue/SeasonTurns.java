package changeover.contracts.catalogue;

import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.Season;
import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntFunction;

/**
 * Windows that come round once a year. Each belongs to the term in which it opens and may be kept until it closes, even
 * past the term's last day; it is given once.
 */
record SeasonTurns(List<Turn> turns) {

    /** @param inYear the window that belongs to the season that opens in a year */
    record Turn(Season season, IntFunction<Window> inYear) {}

    static SeasonTurns inEach(List<String> seasons, Climate climate) {
        return new SeasonTurns(seasons.stream()
                .flatMap(code -> climate.find(code).stream())
                .map(season -> new Turn(season, season::opening))
                .toList());
    }

    static SeasonTurns before(String code, Period lead, Climate climate) {
        return new SeasonTurns(climate.find(code).stream()
                .map(season -> new Turn(season, year -> {
                    var opening = season.opening(year).from();
                    return new Window(opening.minus(lead), opening);
                }))
                .toList());
    }

    List<Due> duesIn(Term term, History history, SeasonRules rules) {
        List<Due> dues = new ArrayList<>();
        for (Turn turn : turns) {
            windowsOf(turn, term, history, rules).forEach(window -> dues.add(Due.within(window, soon(window))));
        }
        dues.sort(Comparator.comparing(Due::window));
        return List.copyOf(dues);
    }

    /** The household is told within two weeks of the opening, by the middle of a shorter window. */
    private static LocalDate soon(Window window) {
        LocalDate inTwoWeeks = window.from().plusDays(14);
        return inTwoWeeks.isBefore(window.middle()) ? inTwoWeeks : window.middle();
    }

    private static List<Window> windowsOf(Turn turn, Term term, History history, SeasonRules rules) {
        List<Window> windows = new ArrayList<>();
        boolean carried = false;
        for (Window window : turnsFrom(turn, term)) {
            if (window.from().isBefore(term.from())) {
                carried = rules.carriesOpenSeason() && !history.gave(window);
                if (carried) {
                    window.since(term.from()).ifPresent(windows::add);
                }
            } else if (!history.gave(window) && !(carried && window.contains(term.until()))) {
                windows.add(window);
            }
        }
        return windows;
    }

    /** Every turn, whole, that is open on the first day of the term or opens in the term. */
    private static List<Window> turnsFrom(Turn turn, Term term) {
        List<Window> turns = new ArrayList<>();
        for (int year = term.from().getYear() - 1; year <= term.until().getYear() + 1; year++) {
            Window window = turn.inYear.apply(year);
            if (window.contains(term.from()) || term.contains(window.from())) {
                turns.add(window);
            }
        }
        return turns;
    }
}
