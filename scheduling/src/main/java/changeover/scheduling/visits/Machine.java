package changeover.scheduling.visits;

import java.util.Map;
import java.util.UUID;

/** A machine as far as its tasks ask: its kind, and what is written down of what fits it. */
public record Machine(UUID id, String kind, Map<String, String> fits) {

    public Machine {
        fits = Map.copyOf(fits);
    }
}
