package changeover.scheduling.hours;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Somebody works in stretches: from an arrival to the last leaving before a gap of more than three hours, which is their own time. A
 * stretch, and every visit in it, is of the day on which it began, also where it ends after midnight; its minutes are those that
 * passed, also in a night in which the clocks move.
 */
final class WorkedDays {

    /** Longer than a drive with a meal; shorter than the rest between an evening and a call in the night. */
    static final Duration GAP = Duration.ofHours(3);

    /** Who left later than that forgot to say so. */
    static final Duration LONGEST_VISIT = Duration.ofHours(16);

    /**
     * A visit that was kept.
     *
     * @param day of its closure
     * @param minutes at the home, as told
     * @param arrived null where nobody said
     * @param left null where nobody said
     */
    record Visited(
            LocalDate day,
            int minutes,
            @Nullable Instant arrived,
            @Nullable Instant left) {}

    /** What the visits say of a day. */
    record Worked(int visits, int onSite, List<WeekHours.Stretch> stretches) {

        static final Worked NONE = new Worked(0, 0, List.of());
    }

    private record Timed(Visited visit, Instant from, Instant until) {}

    private static final class Chain {

        private final List<Visited> visits = new ArrayList<>();
        private final Instant from;
        private Instant until;

        Chain(Instant from) {
            this.from = from;
            this.until = from;
        }
    }

    private final ZoneId zone;

    WorkedDays(ZoneId zone) {
        this.zone = zone;
    }

    /** By day, of one person. */
    Map<LocalDate, Worked> of(List<Visited> visits) {
        List<Chain> chains = new ArrayList<>();
        List<Visited> untimed = new ArrayList<>();
        visits.stream()
                .map(this::timed)
                .sorted(Comparator.comparing(Timed::from))
                .forEach(one -> {
                    if (one.until().equals(one.from())) {
                        untimed.add(one.visit());
                    } else {
                        add(chains, one);
                    }
                });
        Map<LocalDate, List<Visited>> kept = untimed.stream().collect(Collectors.groupingBy(Visited::day));
        Map<LocalDate, List<WeekHours.Stretch>> stretches = new LinkedHashMap<>();
        for (Chain chain : chains) {
            LocalDate day = LocalDate.ofInstant(chain.from, zone);
            kept.computeIfAbsent(day, _ -> new ArrayList<>()).addAll(chain.visits);
            stretches.computeIfAbsent(day, _ -> new ArrayList<>()).add(stretch(chain));
        }
        return kept.entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        one -> new Worked(
                                one.getValue().size(),
                                one.getValue().stream()
                                        .mapToInt(Visited::minutes)
                                        .sum(),
                                stretches.getOrDefault(one.getKey(), List.of()))));
    }

    private static void add(List<Chain> chains, Timed one) {
        Chain last = chains.isEmpty() ? null : chains.getLast();
        if (last == null || Duration.between(last.until, one.from()).compareTo(GAP) > 0) {
            last = new Chain(one.from());
            chains.add(last);
        }
        last.visits.add(one.visit());
        if (one.until().isAfter(last.until)) {
            last.until = one.until();
        }
    }

    /** From and until alike where its hours are not known: told of another day than its own or of the night before it, or not at all. */
    private Timed timed(Visited visit) {
        Instant arrived = minute(visit.arrived());
        Instant left = minute(visit.left());
        Duration told = Duration.ofMinutes(visit.minutes());
        if (arrived == null && left != null) {
            arrived = left.minus(told);
        }
        if (arrived == null) {
            return new Timed(visit, Instant.EPOCH, Instant.EPOCH);
        }
        boolean believed = left != null
                && left.isAfter(arrived)
                && Duration.between(arrived, left).compareTo(LONGEST_VISIT) <= 0;
        Instant until = believed && left != null ? left : arrived.plus(told);
        LocalDate began = LocalDate.ofInstant(arrived, zone);
        boolean ofItsDay = began.equals(visit.day()) || began.equals(visit.day().minusDays(1));
        return new Timed(visit, arrived, ofItsDay ? until : arrived);
    }

    private static @Nullable Instant minute(@Nullable Instant at) {
        return at == null ? null : at.truncatedTo(ChronoUnit.MINUTES);
    }

    private WeekHours.Stretch stretch(Chain chain) {
        return new WeekHours.Stretch(
                chain.from.atZone(zone).toLocalTime(),
                chain.until.atZone(zone).toLocalTime(),
                Math.toIntExact(Duration.between(chain.from, chain.until).toMinutes()));
    }
}
