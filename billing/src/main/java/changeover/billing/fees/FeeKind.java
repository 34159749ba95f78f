package changeover.billing.fees;

import changeover.contracts.words.Wording;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a fee is asked for. */
public enum FeeKind {
    /** The bank sent a payment back. */
    RETURNED(new Wording("Fee for a returned payment", "Frais pour un paiement retourné")),
    /** A reminder had to be sent. */
    REMINDER(new Wording("Fee for a reminder", "Frais de rappel"));

    private final Wording wording;

    FeeKind(Wording wording) {
        this.wording = wording;
    }

    public static Optional<FeeKind> of(String code) {
        return Arrays.stream(values()).filter(kind -> kind.code().equals(code)).findFirst();
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public Wording wording() {
        return wording;
    }

    /** By which the books know the line. */
    String item() {
        return code() + "-fee";
    }
}
