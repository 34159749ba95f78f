package changeover.contracts.agreements;

import changeover.contracts.words.Wording;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Why an agreement ended, as far as the law of a place may ask for it; what else there is to say stands in free words beside. */
public enum EndingCause {
    MOVED("moved", new Wording("the customer moves away", "le client déménage")),
    COMMERCIAL_USE(
            "commercial-use",
            new Wording("the equipment is used commercially", "l’appareil sert à un usage commercial")),
    HOME_SOLD("home-sold", new Wording("the home was sold", "la maison a été vendue")),
    UNWANTED("unwanted", new Wording("the customer no longer wants it", "le client n’en veut plus")),
    UNPAID("unpaid", new Wording("it was not paid", "elle n’a pas été payée"));

    private final String code;
    private final Wording wording;

    EndingCause(String code, Wording wording) {
        this.code = code;
        this.wording = wording;
    }

    /** As it stands in the table, and in the rules of refund: {@code moved}, {@code commercial-use}. */
    public String code() {
        return code;
    }

    public Wording wording() {
        return wording;
    }

    public static Set<String> codes() {
        return Arrays.stream(values()).map(EndingCause::code).collect(Collectors.toSet());
    }

    /** Empty for a text that is none of the codes. */
    public static Optional<EndingCause> find(String code) {
        return Arrays.stream(values()).filter(one -> one.code.equals(code)).findFirst();
    }
}
