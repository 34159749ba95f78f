package changeover.billing.ledger;

import changeover.billing.invoices.Rows;
import changeover.billing.periods.Periods;
import changeover.contracts.tenants.Businesses;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
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
        Rows rows = new Rows(
                "earned_at_close", "close_id uuid, agreement_id uuid, invoiced_minor bigint, earned_minor bigint");
        try (Connection connection = datasource.getConnection()) {
            for (SoldPlan plan : SoldPlanRows.of(connection, currency)) {
                PeriodEndRows.State state = PeriodEndRows.State.of(plan, until, currency);
                rows.add(
                        id,
                        plan.head().id(),
                        state.invoiced().minor(),
                        state.earned().minor());
            }
            rows.insert(connection);
            return id;
        } catch (SQLException cause) {
            throw new IllegalStateException("what was earned could not be written down", cause);
        }
    }
}
