package changeover.contracts.agreements;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** An agreement ended before its term was over, from a day on and for a reason. */
@Entity
@Table(name = "agreement_ending")
public class Ending extends Owned {

    @Column(name = "agreement_id", updatable = false)
    private UUID agreementId = new UUID(0, 0);

    private LocalDate day = LocalDate.EPOCH;
    private String why = "";
    private @Nullable String cause;

    static Ending of(UUID agreementId, LocalDate day, @Nullable EndingCause cause, String why) {
        var ending = new Ending();
        ending.agreementId = agreementId;
        ending.day = day;
        ending.why = why;
        ending.cause = cause == null ? null : cause.code();
        return ending;
    }

    public UUID agreementId() {
        return agreementId;
    }

    public LocalDate day() {
        return day;
    }

    public String why() {
        return why;
    }

    /** Empty where nobody chose one. */
    public Optional<EndingCause> cause() {
        return cause == null ? Optional.empty() : EndingCause.find(cause);
    }
}
