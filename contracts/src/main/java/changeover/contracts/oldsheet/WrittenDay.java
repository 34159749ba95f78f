package changeover.contracts.oldsheet;

import changeover.contracts.words.Folded;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A day as somebody once wrote it, in numbers or in words of either language. What may be two days is said to be two
 * until a person says what stands first.
 */
sealed interface WrittenDay {

    /** One day and no other. */
    record On(LocalDate day) implements WrittenDay {}

    /** Only the month or the year is known: its first day. */
    record Within(LocalDate first) implements WrittenDay {}

    /** It may be either. */
    record Twofold(LocalDate one, LocalDate other) implements WrittenDay {}

    record Unreadable() implements WrittenDay {}

    Pattern HOUR = Pattern.compile("[T ]+\\d{1,2}:\\d{2}.*$");
    Pattern YEAR_FIRST = Pattern.compile("(\\d{4})\\D{1,2}(\\d{1,2})\\D{1,2}(\\d{1,2})");
    Pattern BARE = Pattern.compile("((?:19|20)\\d{2})(\\d{2})(\\d{2})");
    Pattern NUMBERS = Pattern.compile("(\\d{1,2})[-/. ]+(\\d{1,2})[-/. ]+(\\d{4}|\\d{2})");
    Pattern DAY_IN_WORDS = Pattern.compile(
            "(?:[a-z]+ )??(?:le )?(\\d{1,2})(?:er|st|nd|rd|th)? (?:of |de |d )?([a-z]{3,}) (\\d{4}|\\d{2})");
    Pattern MONTH_IN_WORDS = Pattern.compile("(?:[a-z]+ )??([a-z]{3,}) (\\d{1,2})(?:st|nd|rd|th)? (\\d{4}|\\d{2})");
    Pattern MONTH_ONLY = Pattern.compile("([a-z]{3,}) (\\d{4})");
    Pattern MONTH_NUMBER = Pattern.compile("(\\d{1,2})[-/. ](\\d{4})");
    Pattern YEAR_AND_MONTH = Pattern.compile("(\\d{4})[-/. ](\\d{1,2})");
    Pattern YEAR_ONLY = Pattern.compile("\\d{4}");

    /** @param order null until a person said it */
    static WrittenDay read(String said, @Nullable DayOrder order) {
        String text = HOUR.matcher(said.strip()).replaceAll("");
        Matcher yearFirst = YEAR_FIRST.matcher(text);
        Matcher bare = BARE.matcher(text);
        Matcher numbers = NUMBERS.matcher(text);
        if (yearFirst.matches()) {
            return on(number(yearFirst, 1), number(yearFirst, 2), number(yearFirst, 3));
        }
        if (bare.matches()) {
            return on(number(bare, 1), number(bare, 2), number(bare, 3));
        }
        return numbers.matches() ? inNumbers(numbers, order) : inWords(text);
    }

    private static WrittenDay inNumbers(Matcher said, @Nullable DayOrder order) {
        int first = number(said, 1);
        int second = number(said, 2);
        int third = number(said, 3);
        Map<DayOrder, LocalDate> readings = new EnumMap<>(DayOrder.class);
        put(readings, DayOrder.DAY, year(third, said.group(3)), second, first);
        put(readings, DayOrder.MONTH, year(third, said.group(3)), first, second);
        if (said.group(3).length() == 2) {
            put(readings, DayOrder.YEAR, year(first, "00"), second, third);
        }
        Set<LocalDate> days = new LinkedHashSet<>(readings.values());
        LocalDate chosen = order == null ? null : readings.get(order);
        if (chosen != null) {
            return new On(chosen);
        }
        if (days.size() == 1) {
            return new On(days.iterator().next());
        }
        if (days.isEmpty()) {
            return new Unreadable();
        }
        var two = days.iterator();
        return new Twofold(two.next(), two.next());
    }

    private static WrittenDay inWords(String text) {
        String plain = Folded.of(text);
        Matcher day = DAY_IN_WORDS.matcher(plain);
        if (day.matches()) {
            return on(year(number(day, 3), day.group(3)), MonthWords.of(day.group(2)), number(day, 1));
        }
        Matcher month = MONTH_IN_WORDS.matcher(plain);
        if (month.matches()) {
            return on(year(number(month, 3), month.group(3)), MonthWords.of(month.group(1)), number(month, 2));
        }
        Matcher only = MONTH_ONLY.matcher(plain);
        if (only.matches()) {
            return within(on(number(only, 2), MonthWords.of(only.group(1)), 1));
        }
        Matcher numbered = MONTH_NUMBER.matcher(text);
        if (numbered.matches()) {
            return within(on(number(numbered, 2), number(numbered, 1), 1));
        }
        Matcher turned = YEAR_AND_MONTH.matcher(text);
        if (turned.matches()) {
            return within(on(number(turned, 1), number(turned, 2), 1));
        }
        return YEAR_ONLY.matcher(text).matches() ? within(on(Integer.parseInt(text), 1, 1)) : new Unreadable();
    }

    private static WrittenDay within(WrittenDay first) {
        return first instanceof On(LocalDate day) ? new Within(day) : first;
    }

    private static WrittenDay on(int year, OptionalInt month, int day) {
        return month.isEmpty() ? new Unreadable() : on(year, month.getAsInt(), day);
    }

    private static WrittenDay on(int year, int month, int day) {
        LocalDate date = date(year, month, day);
        return date == null ? new Unreadable() : new On(date);
    }

    private static void put(Map<DayOrder, LocalDate> readings, DayOrder order, int year, int month, int day) {
        LocalDate date = date(year, month, day);
        if (date != null) {
            readings.put(order, date);
        }
    }

    /** Null where there is no such day, or one of another age. */
    private static @Nullable LocalDate date(int year, int month, int day) {
        try {
            return year < 1950 || year > 2100 ? null : LocalDate.of(year, month, day);
        } catch (DateTimeException none) {
            return null;
        }
    }

    /** Two figures stand for a year from 1950 to 2049. */
    private static int year(int number, String written) {
        return written.length() == 4 ? number : number < 50 ? 2000 + number : 1900 + number;
    }

    private static int number(Matcher said, int group) {
        return Integer.parseInt(said.group(group));
    }
}
