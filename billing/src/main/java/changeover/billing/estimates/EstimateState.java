package changeover.billing.estimates;

import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Where an estimate stands on a day. That it has expired follows from the day and is stored nowhere. */
public enum EstimateState {
    DRAFT(new Wording("draft", "ébauche")),
    OFFERED(new Wording("offered", "offerte")),
    EXPIRED(new Wording("expired", "expirée")),
    ACCEPTED(new Wording("accepted", "acceptée")),
    REFUSED(new Wording("refused", "refusée")),
    WITHDRAWN(new Wording("withdrawn", "retirée"));

    private final Wording wording;

    EstimateState(Wording wording) {
        this.wording = wording;
    }

    /**
     * @param answer accepted, refused or withdrawn; null while there is none
     * @param validUntil its last day, in
     */
    public static EstimateState of(boolean offered, @Nullable String answer, LocalDate validUntil, LocalDate today) {
        if (answer != null) {
            return valueOf(answer.toUpperCase(Locale.ROOT));
        }
        if (!offered) {
            return DRAFT;
        }
        return today.isAfter(validUntil) ? EXPIRED : OFFERED;
    }

    /** Whether somebody still has to do something: offer it, or answer it. */
    public boolean isOpen() {
        return this == DRAFT || this == OFFERED;
    }

    public Wording wording() {
        return wording;
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
