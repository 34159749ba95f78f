package changeover.billing.estimates;

import java.time.LocalDate;
import java.util.UUID;

/** An estimate was offered: it has its number and stands as it is. */
public record EstimateOffered(UUID estimateId, UUID customerId, UUID homeId, String label, LocalDate day) {}
