package changeover.billing.bank;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How a bank writes its days. */
public enum DayStyle {
    YEAR_MONTH_DAY("uuuu-MM-dd"),
    YEAR_SLASH("uuuu/MM/dd"),
    YEAR_BARE("uuuuMMdd"),
    DAY_SLASH("dd/MM/uuuu"),
    MONTH_SLASH("MM/dd/uuuu"),
    DAY_DASH("dd-MM-uuuu"),
    DAY_POINT("dd.MM.uuuu");

    private final String shown;
    private final DateTimeFormatter format;

    DayStyle(String pattern) {
        shown = pattern.replace("uuuu", "yyyy");
        format = DateTimeFormatter.ofPattern(pattern, Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);
    }

    public static Optional<DayStyle> of(String code) {
        return Arrays.stream(values())
                .filter(style -> style.code().equals(code))
                .findFirst();
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** As a person reads it: {@code dd/MM/yyyy}. */
    public String shown() {
        return shown;
    }

    Optional<LocalDate> read(String text) {
        try {
            LocalDate day = LocalDate.parse(text.strip(), format);
            return day.getYear() < 1990 || day.getYear() > 2200 ? Optional.empty() : Optional.of(day);
        } catch (DateTimeException notADay) {
            return Optional.empty();
        }
    }
}
