package changeover.contracts.customers;

import java.time.LocalDate;
import java.util.UUID;

/** A machine was taken out: nothing is done to it any more from that day on. */
public record EquipmentEnded(UUID equipmentId, LocalDate day) {}
