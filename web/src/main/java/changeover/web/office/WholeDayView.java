package changeover.web.office;

import changeover.billing.notices.WholeDaysMade;
import changeover.contracts.tenants.Membership;
import changeover.scheduling.dayplan.change.WholeDay;
import changeover.scheduling.dayplan.change.WholeDays;
import changeover.web.session.Bundles;
import changeover.web.session.Frame;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;

/** A whole day that moves, in the words of the page. */
record WholeDayView(LocalDate day, String title, List<Person> crew, List<Line> lines, int shown, List<Line> made) {

    public record Person(UUID id, String name, boolean chosen) {}

    /** @param bad a promise is not kept */
    public record Line(
            UUID visit, String was, String home, boolean told, String goes, boolean back, List<String> bad) {}

    static Line line(WholeDay.Goes one, List<WholeDays.Unkept> unkept, Map<UUID, String> names, Frame frame) {
        var words = Bundles.of(WholeDayWords.class, frame.locale());
        LocalDate day = one.day();
        List<String> bad = unkept.stream()
                .map(task -> words.unkept(task.task().in(frame.locale()), frame.brief(task.last())))
                .toList();
        return new Line(
                one.visit().visit(),
                DayOrderPages.hour(one.visit().was()),
                one.visit().address(),
                one.visit().told(),
                day == null
                        ? (one.visit().together() ? words.together() : words.back())
                        : words.goes(
                                frame.brief(day),
                                DayOrderPages.hour(one.starts()),
                                names.getOrDefault(one.technician(), "")),
                day == null,
                bad.isEmpty() && one.unkept()
                        ? List.of(words.over(frame.brief(one.visit().window().last())))
                        : bad);
    }

    static Line made(WholeDaysMade.Made one, Frame frame) {
        var words = Bundles.of(WholeDayWords.class, frame.locale());
        LocalDate day = one.day();
        LocalTime starts = one.starts();
        String goes = day == null || starts == null
                ? words.back()
                : words.goes(frame.brief(day), starts.toString(), Objects.requireNonNullElse(one.technician(), ""));
        String heard = (one.written() ? ", " + words.written() : "") + (one.toRing() ? ", " + words.to_ring() : "");
        var unkept = one.unkept();
        boolean over = one.standing() == WholeDay.Standing.LATE || one.standing() == WholeDay.Standing.OVER;
        List<String> bad = unkept != null
                ? List.of(words.unkept_all(unkept.in(frame.locale())))
                : over ? List.of(words.window_over()) : List.of();
        return new Line(one.visit(), one.was().toString(), one.home(), one.told(), goes + heard, day == null, bad);
    }

    static Map<UUID, String> names(List<Membership> people) {
        return people.stream().collect(Collectors.toMap(Membership::personId, Membership::name, (one, _) -> one));
    }
}
