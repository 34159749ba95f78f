package changeover.scheduling.hours;

import changeover.contracts.words.CsvTable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/** Weeks as a table: a row for each day that somebody worked, hours with two decimals. */
final class HoursTable {

    private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

    private HoursTable() {}

    static byte[] bytes(List<WeekHours> weeks) {
        var table = new CsvTable(
                "person",
                "name",
                "day",
                "visits",
                "on_site_minutes",
                "from",
                "until",
                "minutes",
                "hours",
                "corrected",
                "why",
                "signed",
                "stretches");
        for (WeekHours week : weeks) {
            for (WeekHours.Day day : week.days()) {
                if (day.visits() > 0 || day.correction() != null) {
                    WeekHours.Correction corrected = day.correction();
                    table.row(
                            week.person(),
                            week.name(),
                            day.day(),
                            day.visits(),
                            day.onSite(),
                            day.from(),
                            day.until(),
                            day.minutes(),
                            BigDecimal.valueOf(day.minutes()).divide(SIXTY, 2, RoundingMode.HALF_UP),
                            corrected == null ? "no" : "yes",
                            corrected == null ? null : corrected.why(),
                            week.isSigned() ? "yes" : "no",
                            day.stretches().stream()
                                    .map(one -> one.from() + "-" + one.until())
                                    .collect(Collectors.joining(" ")));
                }
            }
        }
        return table.bytes();
    }
}
