package changeover.billing.documents.band;

import changeover.billing.documents.band.BandGeometry.Bracket;
import changeover.billing.documents.band.BandGeometry.HouseholdLine;
import changeover.billing.documents.band.BandGeometry.HouseholdMark;
import changeover.billing.documents.band.BandGeometry.Knot;
import changeover.billing.documents.band.BandGeometry.MonthBox;
import changeover.billing.documents.band.BandGeometry.Name;
import changeover.billing.documents.band.BandGeometry.Ring;
import changeover.billing.documents.band.BandGeometry.Thread;
import changeover.billing.documents.band.BandGeometry.TurnBox;
import changeover.billing.documents.band.HomeYear.HouseholdTask;
import changeover.billing.documents.band.HomeYear.Promise;
import changeover.billing.documents.band.HomeYear.Row;
import changeover.billing.documents.band.HomeYear.Visit;
import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A year is laid out from the top: rings, strip, machines with their brackets, the base line, the household's tasks. */
final class BandLayout {

    /** Rings nearer than this to each other do not stand on one line. */
    private static final double RINGS_APART = 40;

    private static final double LABEL_WIDTH = 106;

    private final HomeYear year;
    private final BandShape shape;
    private final double days;
    private final Map<String, Integer> levels = new HashMap<>();
    private final Map<String, Double> lowest = new HashMap<>();
    private final List<Name> names = new ArrayList<>();
    private final List<Bracket> brackets = new ArrayList<>();
    private final Set<Knot> knots = new LinkedHashSet<>();

    BandLayout(HomeYear year, BandShape shape) {
        this.year = year;
        this.shape = shape;
        this.days = ChronoUnit.DAYS.between(year.begins(), year.last()) + 1.0;
    }

    BandGeometry laidOut() {
        List<Visit> visits = visitsInside();
        double stripTop = raiseRings(visits) * RINGS_APART + 2 * shape.ring() + 20;
        double stripBottom = stripTop + shape.strip();
        double base = hangRows(stripBottom);
        List<HouseholdLine> household = household(base);
        double height = household.isEmpty() ? base + 10 : household.getLast().y() + 12;
        List<Ring> rings =
                visits.stream().map(visit -> ring(visit, stripTop, stripBottom)).toList();
        return new BandGeometry(
                stripTop,
                stripBottom,
                base,
                height,
                months(),
                turns(),
                names,
                brackets,
                rings,
                List.copyOf(knots),
                household,
                today(rings));
    }

    private List<Visit> visitsInside() {
        return year.visits().stream()
                .filter(visit -> inside(visit.day()))
                .sorted(Comparator.comparing(Visit::day))
                .toList();
    }

    /** Gives each ring the lowest line on which it has room; answers the highest line used. */
    private int raiseRings(List<Visit> visits) {
        List<Double> lastOfLevel = new ArrayList<>();
        for (Visit visit : visits) {
            double x = start(visit.day()) * shape.plotWidth();
            int level = 0;
            while (level < lastOfLevel.size() && x - lastOfLevel.get(level) < RINGS_APART) {
                level++;
            }
            if (level == lastOfLevel.size()) {
                lastOfLevel.add(x);
            } else {
                lastOfLevel.set(level, x);
            }
            levels.put(visit.key(), level);
        }
        return Math.max(0, lastOfLevel.size() - 1);
    }

    private double hangRows(double stripBottom) {
        double y = stripBottom;
        for (Row row : year.rows()) {
            y += shape.row();
            if (shape.namesAbove()) {
                names.add(new Name(row.name(), y - 17));
            } else {
                names.add(new Name(row.name(), y - shape.row() * 0.2));
            }
            y = hang(row, y - (shape.namesAbove() ? 0 : shape.row() * 0.2))
                    + (shape.namesAbove() ? 0 : shape.row() * 0.2);
        }
        return y + (shape.namesAbove() ? 18 : shape.row() * 0.45);
    }

    /** Hangs one machine's brackets; those that overlap get a lane of their own. */
    private double hang(Row row, double y) {
        List<LocalDate> laneEnds = new ArrayList<>();
        List<Promise> inOrder = row.promises().stream()
                .filter(promise -> !promise.last().isBefore(year.begins())
                        && !promise.first().isAfter(year.last()))
                .sorted(Comparator.comparing(Promise::first).thenComparing(Promise::last))
                .toList();
        Map<String, Integer> laneOf = new HashMap<>();
        for (Promise promise : inOrder) {
            String days = promise.first() + "/" + promise.last() + "/" + promise.visit();
            Integer known = laneOf.get(days);
            int lane = known == null ? freeLane(laneEnds, promise) : known;
            laneOf.put(days, lane);
            double at = y + lane * shape.lane();
            if (known == null) {
                brackets.add(bracket(promise, at));
            }
            year.visitOf(promise).filter(visit -> inside(visit.day())).ifPresent(visit -> knot(visit, at));
        }
        return y + Math.max(0, laneEnds.size() - 1) * shape.lane();
    }

    private int freeLane(List<LocalDate> laneEnds, Promise promise) {
        for (int lane = 0; lane < laneEnds.size(); lane++) {
            if (laneEnds.get(lane).isBefore(promise.first())) {
                laneEnds.set(lane, promise.last());
                return lane;
            }
        }
        laneEnds.add(promise.last());
        return laneEnds.size() - 1;
    }

    private Bracket bracket(Promise promise, double y) {
        return new Bracket(
                start(promise.first()),
                end(promise.last()),
                y,
                year.late(promise),
                !promise.first().isBefore(year.begins()),
                !promise.last().isAfter(year.last()));
    }

    private void knot(Visit visit, double y) {
        knots.add(new Knot(middle(visit.day()), y, visit.standing()));
        lowest.merge(visit.key(), y, Math::max);
    }

    private Ring ring(Visit visit, double stripTop, double stripBottom) {
        double y = stripTop - 18 - shape.ring() - levels.getOrDefault(visit.key(), 0) * RINGS_APART;
        return new Ring(
                middle(visit.day()), y, visit.day(), visit.standing(), lowest.getOrDefault(visit.key(), stripBottom));
    }

    private List<MonthBox> months() {
        List<MonthBox> months = new ArrayList<>();
        for (int month = 0; month < 12; month++) {
            LocalDate first = year.begins().plusMonths(month);
            boolean changes = month > 0 && first.getMonthValue() == 1;
            LocalDate last = first.plusMonths(1).minusDays(1);
            months.add(new MonthBox(start(first), end(last), first.getMonth(), first.getYear(), changes));
        }
        return months;
    }

    private List<TurnBox> turns() {
        return year.turns().stream()
                .filter(turn -> turn.window().meets(Window.ofDays(year.begins(), year.last())))
                .map(turn -> new TurnBox(
                        turn.kind(),
                        start(turn.window().from()),
                        end(turn.window().last())))
                .toList();
    }

    private List<HouseholdLine> household(double base) {
        List<HouseholdLine> lines = new ArrayList<>();
        double step = shape.namesAbove() ? 42 : shape.row();
        for (HouseholdTask task : year.household()) {
            if (lines.size() == BandGeometry.HOUSEHOLD_LINES) {
                break;
            }
            List<HouseholdMark> marks = task.marks().stream()
                    .filter(mark -> inside(mark.day()))
                    .map(mark -> new HouseholdMark(middle(mark.day()), mark.done()))
                    .toList();
            lines.add(new HouseholdLine(task.name(), base + step * (lines.size() + 1), marks));
        }
        return lines;
    }

    /** The label goes to the side where no ring and no year stands; to the left when both sides have room. */
    private List<Thread> today(List<Ring> rings) {
        if (!inside(year.today())) {
            return List.of();
        }
        double x = middle(year.today());
        double reach = LABEL_WIDTH / shape.plotWidth();
        boolean leftFits = !shape.namesAbove() || x > reach;
        boolean leftFree = leftFits && rings.stream().noneMatch(ring -> ring.x() <= x && ring.x() > x - reach);
        boolean rightFits = x + reach < 1;
        boolean rightFree = rightFits && rings.stream().noneMatch(ring -> ring.x() >= x && ring.x() < x + reach);
        return List.of(new Thread(x, year.today(), leftFree || (!rightFree && leftFits)));
    }

    private boolean inside(LocalDate day) {
        return !day.isBefore(year.begins()) && !day.isAfter(year.last());
    }

    private double start(LocalDate day) {
        return clipped((double) ChronoUnit.DAYS.between(year.begins(), day));
    }

    private double middle(LocalDate day) {
        return clipped(ChronoUnit.DAYS.between(year.begins(), day) + 0.5);
    }

    private double end(LocalDate day) {
        return clipped(ChronoUnit.DAYS.between(year.begins(), day) + 1.0);
    }

    private double clipped(double day) {
        return Math.min(1, Math.max(0, day / days));
    }
}
