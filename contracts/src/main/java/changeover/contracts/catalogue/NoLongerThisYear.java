package changeover.contracts.catalogue;

import changeover.contracts.calendar.Season;
import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What an offer must say before the yes: a season of this calendar year that is over, or is not taken up, on the first
 * day of the term, and when it is kept for the first time.
 *
 * @param gone the season's window of the year in which the term begins
 * @param next its first window in the term; empty when the term ends before it
 */
public record NoLongerThisYear(Season season, Window gone, Optional<Window> next) {

    /** One row a season; none for a cadence without seasons. */
    public static List<NoLongerThisYear> of(Cadence cadence, Term term, SeasonRules rules) {
        SeasonTurns turns = switch (cadence) {
            case Cadence.BeforeSeason(var season, var lead) -> SeasonTurns.before(season, lead, rules.climate());
            case Cadence.EachSeason(var seasons) -> SeasonTurns.inEach(seasons, rules.climate());
            case Cadence.EveryMonths _,
                    Cadence.TimesAYear _,
                    Cadence.CheckThenReplace _,
                    Cadence.LookThenChange _,
                    Cadence.OnRequest _ -> new SeasonTurns(List.of());
        };
        List<NoLongerThisYear> gone = new ArrayList<>();
        for (SeasonTurns.Turn turn : turns.turns()) {
            Window window = turn.inYear().apply(term.from().getYear());
            boolean over = !term.from().isBefore(window.until());
            boolean leftAlone = window.from().isBefore(term.from()) && !rules.carriesOpenSeason();
            if (over || leftAlone) {
                Optional<Window> next = new SeasonTurns(List.of(turn))
                        .duesIn(term, History.NONE, rules).stream()
                                .map(Due::window)
                                .findFirst();
                gone.add(new NoLongerThisYear(turn.season(), window, next));
            }
        }
        return List.copyOf(gone);
    }
}
