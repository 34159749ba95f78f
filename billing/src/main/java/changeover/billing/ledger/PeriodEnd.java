package changeover.billing.ledger;

import changeover.billing.periods.Periods;
import changeover.contracts.tenants.Businesses;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Currency;
import java.util.UUID;

/** Closing a period also writes down what was earned of each agreement by then. */
@ApplicationScoped
public class PeriodEnd {

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    @Inject
    Periods periods;

    /** @param until the last day, in */
    public UUID close(LocalDate until) {
        UUID id = periods.close(until);
        Currency currency = businesses.current().currency();
        try (Connection connection = datasource.getConnection();
                PreparedStatement insert = connection.prepareStatement("""
                        insert into earned_at_close (close_id, agreement_id, invoiced_minor, earned_minor)
                        values (?, ?, ?, ?)""")) {
            for (SoldPlan plan : SoldPlanRows.of(connection, currency)) {
                PeriodEndRows.State state = PeriodEndRows.State.of(plan, until, currency);
                insert.setObject(1, id);
                insert.setObject(2, plan.head().id());
                insert.setLong(3, state.invoiced().minor());
                insert.setLong(4, state.earned().minor());
                insert.addBatch();
            }
            insert.executeBatch();
            return id;
        } catch (SQLException cause) {
            throw new IllegalStateException("what was earned could not be written down", cause);
        }
    }
}
