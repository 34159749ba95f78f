package changeover.contracts.agreements;

import changeover.contracts.catalogue.Who;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What an agreement promises, in words: for its page and for the paper that is signed. */
public record AgreementDetails(UUID agreementId, List<Machine> machines, List<Part> parts) {

    public AgreementDetails {
        machines = List.copyOf(machines);
        parts = List.copyOf(parts);
    }

    /**
     * A machine and what is promised for it.
     *
     * @param equipmentId null for the home as a whole
     */
    public record Machine(
            @Nullable UUID equipmentId,
            @Nullable String name,
            @Nullable Wording kind,
            List<Promised> promises) {

        public Machine {
            promises = List.copyOf(promises);
        }
    }

    /** @param often "before each heating season" */
    public record Promised(String taskCode, Wording task, Wording often, Who who, int minutes, String basis) {}

    /** @param part its name; the code where the catalogue has none */
    public record Part(String partKind, Wording part, BigDecimal quantity) {}
}
