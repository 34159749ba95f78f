package changeover.scheduling.dayplan.season;

import changeover.scheduling.dayplan.TechnicianBases;
import changeover.scheduling.dayplan.season.SeasonAnswer.MoreDay;
import changeover.scheduling.dayplan.season.SeasonAnswer.MoreTickets;
import changeover.scheduling.dayplan.season.SeasonAnswer.Why;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.IntFunction;

/**
 * What would keep the promises that cannot be kept: a ticket more in the crew where that is all that is missing, and days
 * of somebody more. Each such day stands as late as its most urgent visit allows, so that it serves the most others.
 */
record WhatWouldKeep(List<MoreDay> days, List<MoreTickets> tickets) {

    static WhatWouldKeep of(Figures season, Laid laid, List<Integer> left, IntFunction<Why> why) {
        List<Integer> open = new ArrayList<>(left);
        open.removeIf(visit -> why.apply(visit) == Why.WINDOW_OVER);
        List<MoreTickets> tickets = tickets(season, laid, open, why);
        Set<UUID> served = new TreeSet<>();
        tickets.forEach(one -> served.addAll(one.visits()));
        open.removeIf(visit -> served.contains(season.wanted(visit).visit()));
        var days = new ArrayList<MoreDay>();
        days(season, open, 1, days);
        days(season, open, 2, days);
        days.sort(Comparator.comparing(MoreDay::day).thenComparing(MoreDay::technicians));
        return new WhatWouldKeep(days, tickets);
    }

    private static List<MoreTickets> tickets(Figures season, Laid laid, List<Integer> open, IntFunction<Why> why) {
        Laid trial = laid.copy();
        Map<String, List<UUID>> byTickets = new TreeMap<>();
        for (int visit : open) {
            Wanted wanted = season.wanted(visit);
            if (why.apply(visit) == Why.NO_TICKET && wanted.people() == 1) {
                Laid.Spot spot = trial.best(visit, season.pagesIn(wanted.window(), Set.of()), null);
                if (spot != null) {
                    trial.put(visit, spot);
                    byTickets
                            .computeIfAbsent(String.join(" ", new TreeSet<>(wanted.tickets())), _ -> new ArrayList<>())
                            .add(wanted.visit());
                }
            }
        }
        return byTickets.entrySet().stream()
                .map(one -> new MoreTickets(Set.of(one.getKey().split(" ")), one.getValue()))
                .toList();
    }

    private static void days(Figures season, List<Integer> open, int people, List<MoreDay> days) {
        List<Integer> left = new ArrayList<>(open);
        left.removeIf(visit -> season.wanted(visit).people() != people);
        while (!left.isEmpty()) {
            int urgent = left.removeFirst();
            lastDay(season, urgent).ifPresent(day -> days.add(day(season, urgent, day, people, left)));
        }
    }

    /** The last day of its window on which somebody more could make it. */
    private static Optional<LocalDate> lastDay(Figures season, int visit) {
        return season.asked.open().keySet().stream()
                .filter(day -> season.wanted(visit).window().contains(day)
                        && !day.isBefore(season.asked.first())
                        && page(season, day).back(season, new int[0], 0, visit) != Page.NEVER)
                .max(Comparator.naturalOrder());
    }

    private static Page page(Figures season, LocalDate day) {
        SeasonCase.Open hours = Objects.requireNonNull(season.asked.open().get(day));
        return Page.of(hours.from(), hours.until(), TechnicianBases.USUAL_LUNCH, season.asked.shop());
    }

    /** A day around its most urgent visit, filled with the others that still fit, the most urgent first. */
    private static MoreDay day(Figures season, int urgent, LocalDate day, int people, List<Integer> left) {
        Page page = page(season, day);
        int[] order = {urgent};
        var visits = new ArrayList<UUID>();
        var tickets = new TreeSet<>(season.wanted(urgent).tickets());
        visits.add(season.wanted(urgent).visit());
        for (int visit : List.copyOf(left)) {
            Wanted wanted = season.wanted(visit);
            int at = wanted.window().contains(day) ? between(season, page, order, visit) : -1;
            if (at >= 0) {
                order = with(order, at, visit);
                left.remove(Integer.valueOf(visit));
                visits.add(wanted.visit());
                tickets.addAll(wanted.tickets());
            }
        }
        return new MoreDay(day, people, tickets, visits);
    }

    private static int between(Figures season, Page page, int[] order, int visit) {
        int best = -1;
        int soonest = Integer.MAX_VALUE;
        for (int at = 0; at <= order.length; at++) {
            int back = page.back(season, order, at, visit);
            if (back != Page.NEVER && back < soonest) {
                soonest = back;
                best = at;
            }
        }
        return best;
    }

    private static int[] with(int[] order, int at, int visit) {
        int[] longer = new int[order.length + 1];
        System.arraycopy(order, 0, longer, 0, at);
        longer[at] = visit;
        System.arraycopy(order, at, longer, at + 1, order.length - at);
        return longer;
    }
}
