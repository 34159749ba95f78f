package changeover.scheduling.visits;

import changeover.contracts.tenants.CurrentTenant;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * The year's visits for every accepted agreement of a business that has none yet: after an import, or after a night in
 * which the work was cut short. Run again it finds nothing to do. Each part is a transaction of its own, so what is done
 * stays done.
 */
@ApplicationScoped
public class SeasonRun {

    private static final int PART = 500;
    private static final int AT_ONCE = 2;

    private static final String WITHOUT_A_YEAR = """
            select a.id from agreement a
              join agreement_acceptance c on c.tenant_id = a.tenant_id and c.agreement_id = a.id
             where not exists (select from year_planned y where y.tenant_id = a.tenant_id and y.agreement_id = a.id)
               and not exists (select from agreement_ending e where e.tenant_id = a.tenant_id and e.agreement_id = a.id)
             order by a.number
            """;

    @Inject
    CurrentTenant current;

    @Inject
    AgroalDataSource datasource;

    @Inject
    Years years;

    /**
     * Call it outside any transaction.
     *
     * @return how many years were written
     */
    public int run(UUID tenant) {
        List<UUID> open = current.run(tenant, CurrentTenant.NOBODY, this::withoutAYear);
        if (open.isEmpty()) {
            return 0;
        }
        LaidOutYears laidOut = current.run(tenant, CurrentTenant.NOBODY, years::layOut);
        int written = 0;
        try (var workers =
                Executors.newFixedThreadPool(AT_ONCE, Thread.ofVirtual().factory())) {
            List<Future<Integer>> parts = new ArrayList<>();
            for (int from = 0; from < open.size(); from += PART) {
                List<UUID> part = open.subList(from, Math.min(open.size(), from + PART));
                parts.add(workers.submit(
                        () -> current.run(tenant, CurrentTenant.NOBODY, () -> years.plan(part, laidOut))));
            }
            for (Future<Integer> part : parts) {
                written += part.get();
            }
        } catch (InterruptedException cause) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the season's run was stopped", cause);
        } catch (ExecutionException cause) {
            throw new IllegalStateException("a part of the season could not be planned", cause.getCause());
        }
        return written;
    }

    private List<UUID> withoutAYear() throws SQLException {
        List<UUID> found = new ArrayList<>();
        try (var connection = datasource.getConnection();
                var ask = connection.prepareStatement(WITHOUT_A_YEAR);
                var row = ask.executeQuery()) {
            while (row.next()) {
                found.add(row.getObject(1, UUID.class));
            }
        }
        return found;
    }
}
