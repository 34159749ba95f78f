package changeover.deploy.demo;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.dayplan.Appointments;
import changeover.scheduling.dayplan.change.HoursTold;
import changeover.scheduling.visits.VisitLists;
import changeover.scheduling.visits.VisitTask;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The crew at work: each working day takes the most urgent visits whose days are open, three a technician. */
@ApplicationScoped
public class DemoVisits {

    private static final List<LocalTime> HOURS =
            List.of(LocalTime.of(8, 0), LocalTime.of(10, 45), LocalTime.of(13, 30));

    /** One visit in so many is left for the days around today. */
    private static final int LEFT_BEHIND = 6;

    /** So many of those still have no day. */
    private static final int WITHOUT_DAY = 3;

    private static final int RECENT_DAYS = 45;

    private static final int WEEKS_AHEAD = 3;

    @Inject
    CurrentTenant current;

    @Inject
    VisitLists lists;

    @Inject
    Visits visits;

    @Inject
    Appointments appointments;

    @Inject
    HoursTold told;

    @Inject
    DemoCloseOut closeOut;

    /** A working day in the past: visits are given their hour and closed. */
    void workOn(UUID tenant, List<DemoShop.Hand> hands, LocalDate day, LocalDate today) {
        if (!day.isBefore(today) || isOff(day)) {
            return;
        }
        List<DemoShop.Hand> crew = crew(hands);
        List<VisitLists.Row> open = current.run(tenant, hands.get(1).person(), () -> waiting(day, today));
        int places = crew.size() * HOURS.size();
        for (int i = 0; i < Math.min(open.size(), places); i++) {
            VisitLists.Row visit = open.get(i);
            LocalTime starts = HOURS.get(i / crew.size());
            DemoShop.Hand hand = crew.get(i % crew.size());
            current.run(tenant, hand.person(), () -> {
                DemoShop.Hand able = able(visits.tasksOf(visit.id()), hand, crew);
                LocalTime hour = able == hand ? starts : starts.plusMinutes(20);
                if (give(visit.id(), able, day, hour)) {
                    closeOut.close(visit.id(), able, hour, visit.minutes());
                }
            });
        }
    }

    /** The first visit of the day: we are there in time and nobody opens. Whether there was one. */
    boolean knockInVain(UUID tenant, List<DemoShop.Hand> hands, LocalDate day) {
        if (isOff(day)) {
            return false;
        }
        List<DemoShop.Hand> crew = crew(hands);
        return current.run(
                tenant,
                hands.get(1).person(),
                () -> lists.between(Window.ofDays(day, day), null, 0, 50).stream()
                        .filter(row -> row.how() == null && row.day() == null)
                        .findFirst()
                        .filter(row -> give(
                                row.id(), able(visits.tasksOf(row.id()), crew.getFirst(), crew), day, HOURS.getFirst()))
                        .map(row -> {
                            visits.noAccess(row.id(), day, "Rang twice and telephoned; nobody opened");
                            return true;
                        })
                        .orElse(false));
    }

    /** A visit of the day to which we do not come: its hour was told, and the van stood still. Whether there was one. */
    boolean stayAway(UUID tenant, List<DemoShop.Hand> hands, LocalDate day, String why) {
        if (isOff(day)) {
            return false;
        }
        List<DemoShop.Hand> crew = crew(hands);
        return current.run(
                tenant,
                hands.get(1).person(),
                () -> lists.between(Window.ofDays(day, day), null, 0, 50).stream()
                        .filter(row -> row.how() == null && row.day() == null)
                        .filter(row -> give(
                                row.id(), able(visits.tasksOf(row.id()), crew.getFirst(), crew), day, HOURS.getFirst()))
                        .findFirst()
                        .map(row -> {
                            told.tell(row.id());
                            visits.notKept(row.id(), day, why);
                            return true;
                        })
                        .orElse(false));
    }

    /**
     * Today and the coming days: each technician has stops, the late ones first; a few that are late still have no day,
     * so that somebody must be told.
     */
    void planAhead(UUID tenant, List<DemoShop.Hand> hands, LocalDate today) {
        List<DemoShop.Hand> crew = crew(hands);
        UUID office = hands.get(1).person();
        List<VisitLists.Row> open =
                current.run(
                        tenant,
                        office,
                        () -> lists
                                .between(Window.ofDays(today.minusYears(1), today.plusWeeks(WEEKS_AHEAD)), null, 0, 500)
                                .stream()
                                .filter(row -> row.how() == null && row.day() == null)
                                .toList());
        LocalDate day = today;
        int hour = 0;
        for (VisitLists.Row visit : open.subList(Math.min(WITHOUT_DAY, open.size()), open.size())) {
            while (isOff(day)) {
                day = day.plusDays(1);
            }
            LocalDate on = day;
            DemoShop.Hand hand = crew.get(hour % crew.size());
            LocalTime starts = HOURS.get(hour / crew.size() % HOURS.size());
            current.run(
                    tenant, office, () -> give(visit.id(), able(visits.tasksOf(visit.id()), hand, crew), on, starts));
            if (++hour % (crew.size() * 2) == 0) {
                day = day.plusDays(1);
            }
        }
    }

    private static boolean isNear(@Nullable LocalTime other, LocalTime starts) {
        return other != null && Math.abs(other.toSecondOfDay() - starts.toSecondOfDay()) < 160 * 60;
    }

    private boolean give(UUID visit, DemoShop.Hand hand, LocalDate day, LocalTime starts) {
        boolean taken = lists.between(Window.ofDays(day, day), hand.person(), 0, 50).stream()
                .anyMatch(row -> isNear(row.starts(), starts));
        if (taken) {
            return false;
        }
        appointments.give(visit, new Appointments.Slot(hand.person(), day, starts, starts.plusMinutes(150)));
        return true;
    }

    /** What may be made on the day; of the season that has just ended some are left for the days around today. */
    private List<VisitLists.Row> waiting(LocalDate day, LocalDate today) {
        return lists.between(Window.ofDays(day, day), null, 0, 200).stream()
                .filter(row -> row.how() == null && row.day() == null)
                .filter(row -> row.last().isBefore(today.minusDays(RECENT_DAYS))
                        || Math.floorMod(row.id().hashCode(), LEFT_BEHIND) != 0)
                .toList();
    }

    /** Who holds every ticket that the visit needs: the technician in turn, else the one with them all. */
    private static DemoShop.Hand able(List<VisitTask> tasks, DemoShop.Hand hand, List<DemoShop.Hand> crew) {
        boolean may = tasks.stream()
                .flatMap(task -> task.ticket().stream())
                .allMatch(ticket -> hand.worker().tickets().contains(ticket));
        return may ? hand : crew.getFirst();
    }

    private static List<DemoShop.Hand> crew(List<DemoShop.Hand> hands) {
        return hands.stream()
                .filter(hand -> hand.worker().role().equals("technician"))
                .toList();
    }

    private static boolean isOff(LocalDate day) {
        return day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY;
    }
}
