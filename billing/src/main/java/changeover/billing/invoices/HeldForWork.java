package changeover.billing.invoices;

import changeover.contracts.money.Money;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Collection;
import java.util.Map;
import java.util.UUID;

/** Deposits that are kept for the very work of drafts and will pay them when they are issued. */
public interface HeldForWork {

    /** By draft; a draft whose work nothing is kept for is missing. */
    Map<UUID, Money> of(Connection connection, Collection<UUID> drafts) throws SQLException;
}
