package changeover.contracts.customers;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/**
 * The machines of homes that were entered unread are known now: what was sold there unseen can be promised.
 *
 * @param day on which the last of them was known
 */
public record EquipmentRead(List<UUID> homes, LocalDate day) {

    public EquipmentRead {
        homes = List.copyOf(homes);
    }
}
