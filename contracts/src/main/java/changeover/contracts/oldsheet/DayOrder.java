package changeover.contracts.oldsheet;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What stands first in a day that is written in three numbers; a person says it for the whole file. */
public enum DayOrder {
    DAY,
    MONTH,
    YEAR;

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<DayOrder> of(String code) {
        return Arrays.stream(values())
                .filter(order -> order.code().equals(code))
                .findFirst();
    }
}
