package changeover.contracts.agreements;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** Machines came into agreements that were made without them: their promises are written, the year is to follow. */
public record MachinesTakenIn(List<TakenIn> agreements) {

    public MachinesTakenIn {
        agreements = List.copyOf(agreements);
    }

    /**
     * One agreement, those of a home in the order of their terms.
     *
     * @param day from which the machines are promised anything
     */
    public record TakenIn(UUID agreementId, UUID homeId, LocalDate day, List<UUID> machines) {

        public TakenIn {
            machines = List.copyOf(machines);
        }
    }
}
