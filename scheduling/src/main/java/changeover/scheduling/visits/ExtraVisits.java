package changeover.scheduling.visits;

import changeover.contracts.calendar.Climate;
import changeover.contracts.calendar.Season;
import changeover.contracts.calendar.Term;
import changeover.contracts.calendar.Window;
import changeover.contracts.catalogue.Cadence;
import changeover.contracts.catalogue.History;
import changeover.contracts.catalogue.LongestVisit;
import changeover.contracts.catalogue.SeasonRules;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A plan that sells more visits than its promises need still gives them all: first one in each changeover that has
 * none, then one in midwinter, then in the middle of the longest stretch without a visit.
 */
final class ExtraVisits {

    static final Window ALWAYS = new Window(LocalDate.of(1, 1, 1), LocalDate.of(9999, 12, 31));
    private static final int HALF_WINDOW_DAYS = 21;

    private ExtraVisits() {}

    static List<VisitDraft> added(
            List<VisitDraft> drafts, int sold, Term term, SeasonRules rules, LongestVisit longest) {
        List<VisitDraft> all = keptInSeasons(
                drafts,
                sold,
                seasons(rules.climate().changeovers().stream().map(Season::code).toList(), term, rules),
                longest);
        List<Window> midwinter = rules.climate().find(Climate.MIDWINTER).stream()
                .flatMap(season -> seasons(List.of(season.code()), term, rules).stream())
                .toList();
        for (Window season : midwinter) {
            if (all.size() < sold
                    && all.stream().noneMatch(draft -> draft.window().meets(season))) {
                all.add(VisitDraft.in(season, longest));
            }
        }
        while (all.size() < sold) {
            all.add(VisitDraft.in(longestStretch(all, term), longest));
        }
        return all;
    }

    /** Each changeover takes the narrowest visit that can be in it; where there is none it gets one of its own. */
    private static List<VisitDraft> keptInSeasons(
            List<VisitDraft> drafts, int sold, List<Window> changeovers, LongestVisit longest) {
        Map<VisitDraft, Window> taken = new HashMap<>();
        List<Window> without = new ArrayList<>();
        for (Window season : changeovers) {
            drafts.stream()
                    .filter(draft -> !taken.containsKey(draft) && draft.window().meets(season))
                    .min(Comparator.comparing(
                            (VisitDraft draft) -> draft.window().days()))
                    .ifPresentOrElse(draft -> taken.put(draft, season), () -> without.add(season));
        }
        List<VisitDraft> all = new ArrayList<>(drafts.stream()
                .map(draft -> taken.containsKey(draft) ? draft.keptIn(taken.get(draft)) : draft)
                .toList());
        for (Window season : without) {
            if (all.size() < sold) {
                all.add(VisitDraft.in(season, longest));
            }
        }
        return all;
    }

    /** The seasons that belong to the term, cut to it. */
    private static List<Window> seasons(List<String> codes, Term term, SeasonRules rules) {
        if (codes.isEmpty()) {
            return List.of();
        }
        return new Cadence.EachSeason(codes)
                .windowsIn(term, History.NONE, rules).stream()
                        .flatMap(season -> season.common(term.window()).stream())
                        .toList();
    }

    private static Window longestStretch(List<VisitDraft> drafts, Term term) {
        List<LocalDate> marks = new ArrayList<>(List.of(term.from(), term.last()));
        drafts.stream()
                .flatMap(draft -> draft.window().common(term.window()).stream())
                .map(Window::middle)
                .forEach(marks::add);
        marks.sort(Comparator.naturalOrder());
        LocalDate from = term.from();
        long longest = -1;
        for (int index = 1; index < marks.size(); index++) {
            long days = ChronoUnit.DAYS.between(marks.get(index - 1), marks.get(index));
            if (days > longest) {
                longest = days;
                from = marks.get(index - 1);
            }
        }
        LocalDate middle = from.plusDays(longest / 2);
        return Window.ofDays(middle.minusDays(HALF_WINDOW_DAYS), middle.plusDays(HALF_WINDOW_DAYS))
                .common(term.window())
                .orElse(term.window());
    }
}
