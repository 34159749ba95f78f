package changeover.billing.estimates;

import changeover.contracts.words.Wording;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** How a customer's yes to a repair reached us. */
public enum ConsentChannel {
    /** By the customer's own link, wherever they were. */
    LINK(new Wording("by their own link", "par leur propre lien")),
    /** They spoke with the office on the telephone. */
    CALL(new Wording("by a call with the office", "par un appel avec le bureau")),
    /** They signed where the work is, before whoever does it. */
    SITE(new Wording("signed on the spot", "signé sur place"));

    private final Wording wording;

    ConsentChannel(Wording wording) {
        this.wording = wording;
    }

    public Wording wording() {
        return wording;
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static ConsentChannel of(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT));
    }

    /** Those that the office writes down; a link's yes is the customer's own. */
    public static Set<String> writtenDown() {
        return Arrays.stream(values())
                .filter(one -> one != LINK)
                .map(ConsentChannel::code)
                .collect(Collectors.toUnmodifiableSet());
    }
}
