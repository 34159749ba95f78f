package changeover.scheduling.closeout;

import java.util.Map;
import java.util.UUID;

/** A machine of the home, or common to its building, as far as the sheet needs it. */
public record MachineAtHand(
        UUID id, String kind, String name, Map<String, String> fits, Map<String, String> nameplate) {

    public MachineAtHand {
        fits = Map.copyOf(fits);
        nameplate = Map.copyOf(nameplate);
    }
}
