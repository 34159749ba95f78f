package changeover.web.office;

import changeover.contracts.calendar.OwnSeason;
import changeover.contracts.calendar.Seasons;
import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.scheduling.dayplan.season.SeasonQuestion;
import changeover.scheduling.dayplan.season.SeasonRun;
import changeover.scheduling.dayplan.season.SeasonRunReading;
import changeover.web.session.Bundles;
import changeover.web.session.Frame;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** A season that was asked for, in words: the question, how it stands, and what would keep the rest. */
@ApplicationScoped
class SeasonRunInWords {

    /** @param crew the question in words: which crew was thought of */
    public record Run(
            UUID id,
            String season,
            String crew,
            String by,
            String state,
            boolean running,
            boolean tried,
            int visits,
            int rounds,
            int allRounds,
            int without,
            String driving,
            String roads,
            int accepted) {}

    /** Days or tickets more, with how many visits each would keep. */
    public record More(int days, int byDays, List<String> eachDay, List<String> tickets) {}

    @Inject
    Seasons seasons;

    @Inject
    People people;

    @Inject
    Businesses businesses;

    Run run(SeasonRun run, Frame frame) {
        SeasonQuestion asked = run.question();
        PlanningWords words = Bundles.of(PlanningWords.class, frame.locale());
        Window days = asked.days();
        String season = seasons.find(asked.season())
                        .map(OwnSeason::season)
                        .map(one -> one.name(frame.locale()) + ", ")
                        .orElse("")
                + frame.brief(days.from()) + " – " + frame.brief(days.last());
        LocalDate day =
                LocalDate.ofInstant(run.startedAt(), businesses.current().zone());
        return new Run(
                run.id(),
                season,
                crew(asked, words, frame),
                words.asked_by(name(run.startedBy()), frame.brief(day)),
                run.state().code(),
                run.running(),
                asked.isTried(),
                run.visits(),
                run.rounds(),
                run.allRounds(),
                run.without(),
                String.format(frame.locale(), "%.1f", run.driving() / 60.0),
                run.roads(),
                run.accepted());
    }

    private String crew(SeasonQuestion asked, PlanningWords words, Frame frame) {
        List<String> said = new ArrayList<>();
        asked.without().forEach(person -> said.add(words.left_out(name(person))));
        Window more = asked.moreDays();
        if (more != null) {
            said.add(words.more_hands(asked.more(), frame.brief(more.from()), frame.brief(more.last())));
        }
        asked.idle().stream()
                .sorted()
                .map(day -> words.no_day(day.getDisplayName(TextStyle.FULL, frame.locale())))
                .forEach(said::add);
        return said.isEmpty() ? words.as_it_is() : String.join(", ", said);
    }

    private String name(UUID person) {
        return people.of(person).map(Membership::name).orElse("");
    }

    More more(List<SeasonRunReading.More> all, Frame frame) {
        PlanningWords words = Bundles.of(PlanningWords.class, frame.locale());
        List<SeasonRunReading.More> days =
                all.stream().filter(one -> one.day() != null).toList();
        return new More(
                days.stream().mapToInt(SeasonRunReading.More::technicians).sum(),
                days.stream().mapToInt(one -> one.visits().size()).sum(),
                days.stream().map(one -> day(one, words, frame)).toList(),
                all.stream()
                        .filter(one -> one.day() == null)
                        .map(one -> words.tickets_would(one.visits().size(), tickets(one.tickets(), frame.locale())))
                        .toList());
    }

    private static String day(SeasonRunReading.More more, PlanningWords words, Frame frame) {
        LocalDate day = more.day();
        return words.a_day_more(
                day == null ? "" : frame.brief(day),
                more.technicians(),
                tickets(more.tickets(), frame.locale()),
                more.visits().size());
    }

    private static String tickets(Set<String> kinds, Locale locale) {
        return kinds.stream()
                .sorted()
                .map(kind -> NeedInWords.ticket(kind, locale))
                .collect(Collectors.joining(", "));
    }
}
