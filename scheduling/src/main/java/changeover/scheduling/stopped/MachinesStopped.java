package changeover.scheduling.stopped;

import java.util.List;
import java.util.UUID;

/** Machines must not be used from now on: their homes are told at once. */
public record MachinesStopped(List<UUID> stops) {

    public MachinesStopped {
        stops = List.copyOf(stops);
    }
}
