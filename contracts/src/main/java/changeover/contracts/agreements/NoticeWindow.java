package changeover.contracts.agreements;

import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;

/**
 * Between which days a customer must be told that the agreement ends or renews, by the law of the place.
 *
 * <p>Days are counted in the local calendar, both ends are in; a step of months is clipped to the month's end. A last
 * day on a holiday is not moved: the notice goes earlier.
 *
 * @param rule which row it follows, kept with the notice that is sent
 * @param source where the rule is published
 */
public record NoticeWindow(String rule, Window window, String source) {

    /** Which day the steps are counted back from. */
    public enum Base {
        /** The last day of the term. */
        TERM_END,
        /** The last day on which the customer can say no. */
        CUSTOMER_DEADLINE
    }

    private record Row(String rule, String place, Base base, Period earliest, Period latest, String source) {

        boolean isFor(String where) {
            return where.equals(place) || where.startsWith(place + "-");
        }
    }

    private static final Row HABIT = new Row(
            "habit-60-30",
            "",
            Base.TERM_END,
            Period.ofDays(60),
            Period.ofDays(30),
            "common practice: two months to one month before the end");

    private static final List<Row> ROWS = List.of(
            new Row(
                    "qc-expiry-90-60",
                    "CA-QC",
                    Base.TERM_END,
                    Period.ofDays(90),
                    Period.ofDays(60),
                    "Consumer Protection Act (CQLR c. P-40.1), ss. 214.3 and 214.4"),
            new Row(
                    "ny-gol-5-903",
                    "US-NY",
                    Base.CUSTOMER_DEADLINE,
                    Period.ofDays(30),
                    Period.ofDays(15),
                    "New York General Obligations Law, § 5-903"),
            new Row(
                    "ca-bpc-17602",
                    "US-CA",
                    Base.TERM_END,
                    Period.ofDays(45),
                    Period.ofDays(15),
                    "California Business and Professions Code, § 17602"),
            new Row(
                    "fr-l215-1",
                    "FR",
                    Base.CUSTOMER_DEADLINE,
                    Period.ofMonths(3),
                    Period.ofMonths(1),
                    "Code de la consommation, art. L215-1"));

    /**
     * @param place of the home, {@code CA-QC}; a place without a rule gets the habit of 60 to 30 days
     * @param termEnd last day of the term
     * @param customerDeadline last day to say no to the renewal; the term's end when the agreement names none
     */
    public static NoticeWindow of(String place, LocalDate termEnd, LocalDate customerDeadline) {
        Row row = ROWS.stream().filter(some -> some.isFor(place)).findFirst().orElse(HABIT);
        LocalDate base = switch (row.base) {
            case TERM_END -> termEnd;
            case CUSTOMER_DEADLINE -> customerDeadline;
        };
        return new NoticeWindow(row.rule, Window.ofDays(base.minus(row.earliest), base.minus(row.latest)), row.source);
    }

    public static NoticeWindow of(String place, LocalDate termEnd) {
        return of(place, termEnd, termEnd);
    }

    public LocalDate earliest() {
        return window.from();
    }

    public LocalDate latest() {
        return window.last();
    }

    /** The day in the middle: late enough to be remembered, early enough for a holiday. */
    public LocalDate planned() {
        return window.middle();
    }
}
