package changeover.billing.ledger;

import changeover.billing.ledger.ASoldPlan.Sold;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

/** A plan of a year with two visits of one size, kept by hand in whole cents: what it asks for, what it earned, what was kept. */
final class PlanByHand {

    private static final long DAYS = 365;

    /** Cents on a day. */
    record Dated(LocalDate day, long cents) {}

    /** An instalment that was not asked for yet. */
    record Waiting(UUID id, long cents) {}

    final Sold sold;
    final List<UUID> visits;
    final List<Waiting> waiting = new ArrayList<>();
    final List<UUID> papers = new ArrayList<>();
    final List<LocalDate> done = new ArrayList<>();
    LocalDate ended;
    private final LocalDate from;
    private final List<Dated> asked = new ArrayList<>();
    private final List<Dated> invoiced = new ArrayList<>();
    private final List<Dated> back = new ArrayList<>();
    private final List<Dated> settled = new ArrayList<>();

    PlanByHand(Sold sold, LocalDate from, List<UUID> visits) {
        this.sold = sold;
        this.from = from;
        this.visits = visits;
    }

    void drafted(UUID draft, long cents) {
        waiting.add(new Waiting(draft, cents));
        asked.add(new Dated(LocalDate.MIN, cents));
    }

    long issued(LocalDate day) {
        Waiting next = waiting.removeFirst();
        papers.add(next.id());
        invoiced.add(new Dated(day, next.cents()));
        return next.cents();
    }

    void credited(LocalDate day, long cents) {
        invoiced.add(new Dated(day, -cents));
        back.add(new Dated(day, cents));
    }

    boolean settled() {
        return !settled.isEmpty();
    }

    /** What the business keeps that way; instalments fall from the last on, what is credited is told by the notes. */
    long settle(LocalDate day, RefundWay way) {
        LocalDate known = earliest(
                        ended, settled.stream().map(Dated::day).findFirst().orElse(ended))
                .minusDays(1);
        long price = Math.max(0, standing(known));
        long days = (2 * price * ChronoUnit.DAYS.between(from, ended) + DAYS) / (2 * DAYS);
        long work = visits(price, ended);
        long keeps = switch (way) {
            case PRO_RATA -> days;
            case WORK_DONE -> work;
            case PRO_RATA_LESS_WORK -> Math.min(price, days + work);
        };
        long net = invoiced(day);
        long left = Math.max(0, keeps - net);
        long kept = Math.min(keeps, net);
        List<Waiting> stay = new ArrayList<>();
        for (Waiting one : waiting) {
            long part = Math.min(left, one.cents());
            left -= part;
            kept += part;
            if (part > 0) {
                stay.add(new Waiting(one.id(), part));
            }
            if (part < one.cents()) {
                back.add(new Dated(day, one.cents() - part));
            }
        }
        waiting.clear();
        waiting.addAll(stay);
        settled.add(new Dated(day, kept));
        return Math.max(0, net - keeps);
    }

    long invoiced(LocalDate day) {
        return until(invoiced.stream(), day);
    }

    long earned(LocalDate day) {
        LocalDate known = day;
        if (ended != null) {
            known = earliest(known, ended.minusDays(1));
        }
        if (settled()) {
            known = earliest(known, settled.getFirst().day().minusDays(1));
        }
        long earned = visits(Math.max(0, standing(known)), ended == null ? day : earliest(day, ended));
        Dated last = settled.reversed().stream()
                .filter(one -> !one.day().isAfter(day))
                .findFirst()
                .orElse(null);
        return last == null ? earned : Math.min(last.cents(), standing(day));
    }

    private long standing(LocalDate day) {
        return until(asked.stream(), day) - until(back.stream(), day);
    }

    /** The half of a visit, the odd cent with the first. */
    private long visits(long price, LocalDate until) {
        long count = done.stream().filter(day -> !day.isAfter(until)).count();
        return count == 0 ? 0 : count == 1 ? (price + 1) / 2 : price;
    }

    private static long until(Stream<Dated> rows, LocalDate day) {
        return rows.filter(one -> !one.day().isAfter(day))
                .mapToLong(Dated::cents)
                .sum();
    }

    private static LocalDate earliest(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }
}
