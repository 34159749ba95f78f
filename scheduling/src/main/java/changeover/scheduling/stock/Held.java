package changeover.scheduling.stock;

import java.math.BigDecimal;
import java.util.UUID;

/** So much of one part lies at one place; below nought where somebody named a reason for it. */
public record Held(UUID placeId, String partCode, BigDecimal quantity) {}
