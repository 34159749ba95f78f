package changeover.billing.serving;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What is done at a home whose payer is late, from the mildest to the strictest. */
public enum Word {
    SERVE,
    ASK,
    NOT;

    public static Optional<Word> of(String code) {
        return Arrays.stream(values()).filter(word -> word.code().equals(code)).findFirst();
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
