package changeover.billing.invoices;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Map;
import java.util.UUID;

/** On which day the first money for a document came in; a document that nothing was paid for is missing. */
public interface FirstPaid {

    Map<UUID, LocalDate> days(Collection<UUID> invoices);
}
