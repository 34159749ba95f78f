package changeover.scheduling.households;

import changeover.contracts.catalogue.LabelInterval;
import changeover.contracts.catalogue.PartSize;
import changeover.scheduling.intervals.Limits;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * A place for a filter in a home. Slots of the same thickness and the same class of filter are compared with each other.
 *
 * @param size face and thickness, with the class where it is known, as the shelf is asked for them; empty where nobody read it
 * @param thickness inches as the register writes them; empty where nobody read it, and then the filter counts as thin
 * @param rating the filter's class (MERV); empty where nobody read it
 * @param labelMonths what the unit's own label says; 0 where it says nothing
 */
public record FilterSlot(
        UUID id, UUID homeId, String name, String size, String thickness, String rating, int labelMonths) {

    /** The kind of equipment that is a slot. */
    public static final String KIND = "filter-slot";

    private static final Set<String> DEEP = Set.of("4", "5");

    static FilterSlot of(UUID id, UUID homeId, String name, Map<String, String> fits) {
        String label = fits.getOrDefault(LabelInterval.LABEL_MONTHS, "").strip();
        return new FilterSlot(
                id,
                homeId,
                name,
                PartSize.ofMachine("size", fits).map(PartSize::words).orElse(""),
                fits.getOrDefault("thickness", "").strip(),
                fits.getOrDefault("merv", "").strip(),
                label.matches("[1-9]|[1-5]\\d|60") ? Integer.parseInt(label) : 0);
    }

    FilterSlot in(UUID otherHome) {
        return new FilterSlot(id, otherHome, name, size, thickness, rating, labelMonths);
    }

    /** Slots of one sort are compared with each other. */
    String sort() {
        return thickness + "|" + rating;
    }

    /** The household's task that is about this slot. */
    public String taskCode() {
        return DEEP.contains(thickness) ? "filter-deep" : "filter-thin";
    }

    /** The unit's own label first. */
    public Limits limits() {
        if (labelMonths > 0) {
            return Limits.ofLabel(labelMonths);
        }
        return Limits.ofThickness(thickness.matches("\\d{1,2}") ? Math.clamp(Integer.parseInt(thickness), 1, 12) : 1);
    }
}
