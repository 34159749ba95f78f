package changeover.web.session;

import changeover.contracts.words.Wording;
import changeover.scheduling.hours.WeekHours;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.UUID;

/** A week's hours, as a page says them. */
public final class WeekInWords {

    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    /** From an arrival to the last leaving before a long gap. */
    public record Stretch(String from, String until) {}

    /** @param why of its correction, or empty */
    public record Day(String date, String day, int visits, List<Stretch> stretches, String hours, String why) {}

    /** @param standing signed, before (signed before it was corrected), or open */
    public record Week(UUID person, String name, List<Day> days, String hours, int minutes, String standing) {}

    private WeekInWords() {}

    public static Week of(WeekHours week, Frame frame) {
        String standing = week.isSigned() ? "signed" : week.signature() != null ? "before" : "open";
        return new Week(
                week.person(),
                week.name(),
                week.days().stream().map(one -> day(one, frame)).toList(),
                hours(week.minutes(), frame),
                week.minutes(),
                standing);
    }

    private static Day day(WeekHours.Day one, Frame frame) {
        WeekHours.Correction corrected = one.correction();
        return new Day(
                one.day().toString(),
                frame.brief(one.day()),
                one.visits(),
                one.stretches().stream()
                        .map(stretch -> new Stretch(
                                stretch.from().toString(), stretch.until().toString()))
                        .toList(),
                one.visits() == 0 && corrected == null ? "" : hours(one.minutes(), frame),
                corrected == null ? "" : corrected.why());
    }

    private static String hours(int minutes, Frame frame) {
        String text = BigDecimal.valueOf(minutes)
                .divide(SIXTY, 2, RoundingMode.HALF_UP)
                .toPlainString();
        return new Wording(text, text.replace('.', ',')).in(frame.locale());
    }
}
