package changeover.billing.payments;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How long ago what is open was to be paid. */
public enum Age {
    NOT_DUE(Integer.MIN_VALUE, 0),
    LATE_30(1, 30),
    LATE_60(31, 60),
    LATE_90(61, 90),
    OLDER(91, Integer.MAX_VALUE);

    private final int least;
    private final int most;

    Age(int least, int most) {
        this.least = least;
        this.most = most;
    }

    public static Optional<Age> of(String code) {
        return Arrays.stream(values()).filter(age -> age.code().equals(code)).findFirst();
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    int least() {
        return least;
    }

    int most() {
        return most;
    }
}
