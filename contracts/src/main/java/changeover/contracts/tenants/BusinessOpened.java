package changeover.contracts.tenants;

import java.time.LocalDate;
import java.util.UUID;

/** A business has opened its door; whoever has rows to begin with adds them now. */
public record BusinessOpened(UUID tenantId, String country, String region, String language, LocalDate day) {}
