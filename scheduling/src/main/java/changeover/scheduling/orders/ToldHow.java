package changeover.scheduling.orders;

import changeover.contracts.words.Wording;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** How a customer was told of their part. */
public enum ToldHow {
    CALL("by telephone", "par téléphone"),
    MESSAGE("by message", "par message"),
    PERSON("in person", "en personne");

    private final Wording wording;

    ToldHow(String en, String fr) {
        wording = new Wording(en, fr);
    }

    public Wording wording() {
        return wording;
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static ToldHow of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    public static Set<String> codes() {
        return Arrays.stream(values()).map(ToldHow::code).collect(Collectors.toUnmodifiableSet());
    }
}
