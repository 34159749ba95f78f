package changeover.billing.payments;

import changeover.contracts.words.Wording;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** How money changed hands; only cash is rounded. */
public enum Way {
    CASH(new Wording("cash", "comptant")),
    CARD(new Wording("card", "carte")),
    CHEQUE(new Wording("cheque", "chèque")),
    TRANSFER(new Wording("transfer", "virement")),
    DEBIT(new Wording("direct debit", "prélèvement")),
    OTHER(new Wording("other", "autre")),
    /** Prepaid before the take-over: the old books have it. */
    BEFORE(new Wording("from before", "repris d’avant"));

    private final Wording wording;

    Way(Wording wording) {
        this.wording = wording;
    }

    public static Way of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    /** Those that a person may choose. */
    public static List<Way> chosen() {
        return Arrays.stream(values()).filter(way -> way != BEFORE).toList();
    }

    /** Those that a person may choose, by their codes. */
    public static Set<String> codes() {
        return chosen().stream().map(Way::code).collect(Collectors.toUnmodifiableSet());
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public Wording wording() {
        return wording;
    }
}
