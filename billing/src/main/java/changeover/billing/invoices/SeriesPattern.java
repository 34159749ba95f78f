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
 * <p>What stands before the number is the series; a series that names the year begins anew with it. The number comes
 * last, so that two documents never share a label.
 */
public record SeriesPattern(String text) {

    private static final Pattern SHAPE =
            Pattern.compile("([A-Za-z0-9 ./_-]*(?:\\{year}|\\{yy})?[A-Za-z0-9 ./_-]*)\\{number(?::([1-9]))?}");
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
        String series = before.replace("{year}", year).replace("{yy}", year.substring(2));
        return series.isEmpty() ? "#" : series;
    }

    /** The label of a number in that series; a number with more digits than asked keeps them all. */
    public String label(LocalDate day, long number) {
        String digits = matched().group(2);
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
