package changeover.scheduling.orders;

import changeover.contracts.words.Wording;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Why a part that was ordered goes back. */
public enum ReturnWhy {
    WRONG("the wrong part", "mauvaise pièce"),
    UNUSED("not needed", "pas nécessaire"),
    FAULTY("faulty", "défectueuse");

    private final Wording wording;

    ReturnWhy(String en, String fr) {
        wording = new Wording(en, fr);
    }

    public Wording wording() {
        return wording;
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static ReturnWhy of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    public static Set<String> codes() {
        return Arrays.stream(values()).map(ReturnWhy::code).collect(Collectors.toUnmodifiableSet());
    }
}
