package changeover.billing.runs;

import changeover.contracts.money.Money;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A run as its rows say it stands: who began it and when, how far it is, how it ended.
 *
 * @param day the day its documents bear
 * @param issued how many documents it gave a number
 * @param joined drafts that went into another one, for payers who want one paper
 * @param refused drafts that it left as they were
 * @param papers documents of it whose paper is still to be made
 * @param totals of what it issued, tax included, a currency each
 */
public record BillingRun(
        UUID id,
        LocalDate day,
        UUID startedBy,
        Instant startedAt,
        State state,
        @Nullable Instant endedAt,
        int drafts,
        int issued,
        int joined,
        int refused,
        int papers,
        List<Money> totals) {

    /** How a run stands. */
    public enum State {
        RUNNING,
        HALTED,
        DONE;

        public String code() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** Drafts that were looked at already. */
    public int handled() {
        return issued + joined + refused;
    }

    public boolean running() {
        return state == State.RUNNING;
    }
}
