package changeover.deploy.rule;

import changeover.scheduling.intervals.Limits;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;

/** The unit in which somebody counts how long a filter was in. */
enum SpanUnit {
    HOURS(1.0 / 24),
    DAYS(1),
    WEEKS(7),
    MONTHS(Limits.MONTH_DAYS);

    private final double days;

    SpanUnit(double days) {
        this.days = days;
    }

    static SpanUnit of(String word) {
        return Arrays.stream(values())
                .filter(unit -> unit.word().equals(word))
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException("unit must be hours, days, weeks or months, not " + word + "."));
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    double days(BigDecimal count) {
        return count.doubleValue() * days;
    }

    double from(double dayCount) {
        return dayCount / days;
    }
}
