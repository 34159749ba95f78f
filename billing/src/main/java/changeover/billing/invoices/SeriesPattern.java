package changeover.billing.invoices;

import changeover.contracts.words.Refusal;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a business writes its document numbers: {@code F-{year}-{number:4}} makes {@code F-2026-0391}.
 *
 * <p>What stands before the number is the series; a series that names the year begins anew with it. {@code {fiscal:4}} is the
 * fiscal year that begins in April: {@code 2026-27} from April 2026 on, and {@code 2026} where it begins in January. The
 * number comes last, so that two documents never share a label.
 */
public record SeriesPattern(String text) {

    private static final Pattern FISCAL = Pattern.compile("\\{fiscal:(1[0-2]|[1-9])}");
    private static final Pattern SHAPE = Pattern.compile(
            "([A-Za-z0-9 ./_-]*(?:\\{year}|\\{yy}|" + FISCAL + ")?[A-Za-z0-9 ./_-]*)\\{number(?::([1-9]))?}");
    private static final int LONGEST = 40;

    /** @throws changeover.contracts.words.Refused when the pattern has no number at its end */
    public static SeriesPattern of(String text) {
        if (text.length() > LONGEST || !SHAPE.matcher(text).matches()) {
            throw Refusal.of("numbering.pattern", Map.of("pattern", text))
                    .at("pattern")
                    .thrown();
        }
        return new SeriesPattern(text);
    }

    /** The series of a document issued on the day: {@code F-2026-}. A series without any text is {@code #}. */
    public String series(LocalDate day) {
        String before = matched().group(1);
        String year = String.valueOf(day.getYear());
        String series = FISCAL.matcher(before.replace("{year}", year).replace("{yy}", year.substring(2)))
                .replaceAll(begins -> fiscal(day, Integer.parseInt(begins.group(1))));
        return series.isEmpty() ? "#" : series;
    }

    private static String fiscal(LocalDate day, int firstMonth) {
        int year = day.getMonthValue() < firstMonth ? day.getYear() - 1 : day.getYear();
        return firstMonth == 1 ? String.valueOf(year) : String.format(Locale.ROOT, "%d-%02d", year, (year + 1) % 100);
    }

    /** The label of a number in that series; a number with more digits than asked keeps them all. */
    public String label(LocalDate day, long number) {
        String digits = matched().group(3);
        String padded =
                digits == null ? String.valueOf(number) : String.format(Locale.ROOT, "%0" + digits + "d", number);
        String series = series(day);
        return (series.equals("#") ? "" : series) + padded;
    }

    private Matcher matched() {
        Matcher matcher = SHAPE.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalStateException(text);
        }
        return matcher;
    }
}
