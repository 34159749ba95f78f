package changeover.deploy.demo;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.dayplan.Appointments;
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

    /** One visit in so many is left behind, so that something is late. */
    private static final int LEFT_BEHIND = 29;

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
    DemoCloseOut closeOut;

    /** A working day in the past: visits are given their hour and closed. */
    void workOn(UUID tenant, List<DemoShop.Hand> hands, LocalDate day, LocalDate today) {
        if (!day.isBefore(today) || isOff(day)) {
            return;
        }
        List<DemoShop.Hand> crew = crew(hands);
        List<VisitLists.Row> open = current.run(tenant, hands.get(1).person(), () -> waiting(day));
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

    /** The coming weeks: half of what may be made has its day in pencil. */
    void planAhead(UUID tenant, List<DemoShop.Hand> hands, LocalDate today) {
        List<DemoShop.Hand> crew = crew(hands);
        int given = 0;
        for (LocalDate day = today; day.isBefore(today.plusWeeks(WEEKS_AHEAD)); day = day.plusDays(1)) {
            if (isOff(day)) {
                continue;
            }
            LocalDate on = day;
            List<VisitLists.Row> open = current.run(tenant, hands.get(1).person(), () -> waiting(on));
            for (int i = 0; i < Math.min(open.size(), 4); i++) {
                VisitLists.Row visit = open.get(i);
                DemoShop.Hand hand = crew.get(given++ % crew.size());
                LocalTime starts = HOURS.get(i % HOURS.size());
                current.run(
                        tenant,
                        hands.get(1).person(),
                        () -> give(visit.id(), able(visits.tasksOf(visit.id()), hand, crew), on, starts));
            }
        }
    }

    private static boolean isNear(@Nullable LocalTime other, LocalTime starts) {
        return other != null && Math.abs(other.toSecondOfDay() - starts.toSecondOfDay()) < 160 * 60;
    }

    private boolean give(UUID visit, DemoShop.Hand hand, LocalDate day, LocalTime starts) {
        boolean taken = !lists.between(Window.ofDays(day, day), hand.person(), 0, 50).stream()
                .filter(row -> isNear(row.starts(), starts))
                .toList()
                .isEmpty();
        if (taken) {
            return false;
        }
        appointments.give(visit, new Appointments.Slot(hand.person(), day, starts, starts.plusMinutes(150)));
        return true;
    }

    private List<VisitLists.Row> waiting(LocalDate day) {
        return lists.between(Window.ofDays(day, day), null, 0, 200).stream()
                .filter(row -> row.how() == null && row.day() == null)
                .filter(row -> Math.floorMod(row.id().hashCode(), LEFT_BEHIND) != 0)
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
