package changeover.web.api;

import changeover.contracts.calendar.Window;
import changeover.scheduling.dayplan.season.SeasonQuestion;
import changeover.scheduling.dayplan.season.SeasonRun;
import changeover.scheduling.dayplan.season.SeasonRunReading;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A season that was asked for, as the API says it.
 *
 * @param state running, halted or done
 * @param waiting visits that waited when it began
 * @param rounds of the search that are behind it, of {@code allRounds}
 * @param allKept whether every visit found a day; null while it runs
 * @param technicianDays how many days of somebody more would keep what a day more can keep; null while it runs
 * @param drivingMinutes that the days add; null while it runs
 * @param accepted how many of its days were given
 * @param unkept the promises that cannot be kept, the most urgent first
 * @param moreDays days of somebody more that would keep them
 * @param moreTickets tickets that would let the crew as it stands keep them
 */
public record SeasonRunDocument(
        UUID id,
        UUID season,
        LocalDate first,
        LocalDate last,
        LocalDate from,
        Set<UUID> without,
        int more,
        List<String> idle,
        Instant startedAt,
        @Nullable Instant endedAt,
        String state,
        int waiting,
        int rounds,
        int allRounds,
        @Nullable Boolean allKept,
        @Nullable Integer technicianDays,
        @Nullable Integer drivingMinutes,
        int accepted,
        List<SeasonRunReading.Row> kept,
        List<SeasonRunReading.Row> unkept,
        List<SeasonRunReading.More> moreDays,
        List<SeasonRunReading.More> moreTickets) {

    private static final int MOST = 10_000;

    /** How it stands, without its visits. */
    static SeasonRunDocument standing(SeasonRun run) {
        return of(run, List.of(), List.of(), List.of(), false);
    }

    static SeasonRunDocument of(SeasonRun run, SeasonRunReading reading) {
        if (run.running()) {
            return standing(run);
        }
        Window days = run.question().days();
        return of(run, reading.kept(run.id(), days), reading.unkept(run.id(), MOST), reading.more(run.id()), true);
    }

    private static SeasonRunDocument of(
            SeasonRun run,
            List<SeasonRunReading.Row> kept,
            List<SeasonRunReading.Row> unkept,
            List<SeasonRunReading.More> more,
            boolean whole) {
        SeasonQuestion asked = run.question();
        return new SeasonRunDocument(
                run.id(),
                asked.season(),
                asked.days().from(),
                asked.days().last(),
                asked.first(),
                asked.without(),
                asked.more(),
                asked.idle().stream()
                        .sorted()
                        .map(day -> day.name().toLowerCase(Locale.ROOT))
                        .toList(),
                run.startedAt(),
                run.endedAt(),
                run.state().code(),
                run.visits(),
                run.rounds(),
                run.allRounds(),
                run.running() ? null : run.without() == 0,
                whole
                        ? more.stream()
                                .filter(one -> one.day() != null)
                                .mapToInt(SeasonRunReading.More::technicians)
                                .sum()
                        : null,
                run.running() ? null : run.driving(),
                run.accepted(),
                kept,
                unkept,
                more.stream().filter(one -> one.day() != null).toList(),
                more.stream().filter(one -> one.day() == null).toList());
    }
}
