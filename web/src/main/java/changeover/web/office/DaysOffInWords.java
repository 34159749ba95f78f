package changeover.web.office;

import changeover.scheduling.dayplan.DayOff;
import changeover.scheduling.dayplan.change.Leaving;
import changeover.web.session.Frame;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** Days off as runs that end as they began, and the days off on which visits are booked. */
final class DaysOffInWords {

    /** @param id of the first day; {@code last} is the last one, as a form sends it back */
    public record Off(UUID id, String days, String last, String why, boolean whole) {}

    public record Visit(UUID id, String home, String hour, boolean told, boolean along) {}

    /** A day off with visits on it. */
    public record Booked(LocalDate address, String day, List<Visit> visits) {}

    private DaysOffInWords() {}

    /** @param all by day */
    static List<Off> runs(List<DayOff> all, Frame frame) {
        List<List<DayOff>> runs = new ArrayList<>();
        for (DayOff one : all) {
            runs.stream()
                    .filter(run -> follows(run.getLast(), one))
                    .findFirst()
                    .ifPresentOrElse(run -> run.add(one), () -> runs.add(new ArrayList<>(List.of(one))));
        }
        return runs.stream()
                .map(run -> new Off(
                        run.getFirst().id(),
                        run.size() == 1
                                ? frame.inWords(run.getFirst().day())
                                : frame.brief(run.getFirst().day()) + " – "
                                        + frame.brief(run.getLast().day()),
                        run.getLast().day().toString(),
                        run.getFirst().why(),
                        run.getFirst().personId().isEmpty()))
                .toList();
    }

    private static boolean follows(DayOff last, DayOff one) {
        return last.day().plusDays(1).equals(one.day())
                && last.personId().equals(one.personId())
                && last.why().equals(one.why());
    }

    static List<Booked> booked(List<Leaving.Left> all, Frame frame) {
        return all.stream()
                .map(Leaving.Left::day)
                .distinct()
                .map(day -> new Booked(
                        day,
                        frame.inWords(day),
                        all.stream()
                                .filter(one -> one.day().equals(day))
                                .map(one -> new Visit(
                                        one.visit(), one.home(), one.starts().toString(), one.told(), one.along()))
                                .toList()))
                .toList();
    }
}
