package changeover.billing.invoices;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A draft that is not asked for.
 *
 * @param by who discarded it; null when the product did it by itself
 */
public record Discard(LocalDate day, String why, @Nullable UUID by) {}
