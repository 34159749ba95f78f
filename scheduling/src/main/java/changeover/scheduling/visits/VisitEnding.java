package changeover.scheduling.visits;

import changeover.contracts.tenants.Owned;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A visit is over: how, on which day, and why when it was not closed. */
@Entity
@Table(name = "visit_ending")
public class VisitEnding extends Owned {

    @Column(name = "visit_id", updatable = false)
    private UUID visitId = new UUID(0, 0);

    private String how = "";
    private LocalDate day = LocalDate.EPOCH;
    private @Nullable String why;

    static VisitEnding of(UUID visitId, VisitEnd how, LocalDate day, @Nullable String why) {
        var ending = new VisitEnding();
        ending.visitId = visitId;
        ending.how = how.code();
        ending.day = day;
        ending.why = why;
        return ending;
    }

    public UUID visitId() {
        return visitId;
    }

    public VisitEnd how() {
        return VisitEnd.ofCode(how);
    }

    public LocalDate day() {
        return day;
    }

    public Optional<String> why() {
        return Optional.ofNullable(why);
    }
}
