package changeover.billing.invoices;

import changeover.contracts.money.Money;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Collection;
import java.util.Map;
import java.util.UUID;

/** What customers said yes to for the work of visits. */
public interface PromisedAmounts {

    /**
     * By visit, before taxes, less what other visits of the same work were charged already; a visit whose work nobody
     * estimated is missing.
     */
    Map<UUID, Money> left(Connection connection, Collection<UUID> visits) throws SQLException;
}
