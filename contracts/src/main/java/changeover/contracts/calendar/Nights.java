package changeover.contracts.calendar;

import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import io.agroal.api.AgroalDataSource;
import io.quarkus.agroal.DataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;
import org.jboss.logging.Logger;

/**
 * The night's work of a whole installation: every business whose day waits lets it pass, whichever machine comes first. Each
 * machine begins somewhere else in the list, passes over what another has in hand, and is held up by no business that fails.
 */
@ApplicationScoped
public class Nights {

    private static final Logger LOG = Logger.getLogger(Nights.class);

    /**
     * What one machine did of a night.
     *
     * @param businesses that waited when it looked
     * @param days that passed here
     * @param failed businesses whose day failed here, to be tried again
     */
    public record Night(int businesses, int days, int failed, Duration took) {}

    @Inject
    @DataSource("lookup")
    AgroalDataSource lookup;

    @Inject
    CurrentTenant current;

    @Inject
    Today today;

    @Inject
    Days days;

    @Inject
    Clock clock;

    public Night pass() {
        return pass(waiting());
    }

    /** The businesses whose day waits, by one statement. */
    List<UUID> waiting() {
        try (var connection = lookup.getConnection();
                var ask = connection.prepareStatement("select * from businesses_whose_day_waits(?)")) {
            ask.setObject(1, OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC));
            List<UUID> waiting = new ArrayList<>();
            try (ResultSet row = ask.executeQuery()) {
                while (row.next()) {
                    waiting.add(row.getObject(1, UUID.class));
                }
            }
            return waiting;
        } catch (SQLException cause) {
            throw new IllegalStateException("the businesses whose day waits could not be read", cause);
        }
    }

    Night pass(List<UUID> waiting) {
        long from = System.nanoTime();
        List<UUID> somewhereElse = new ArrayList<>(waiting);
        Collections.shuffle(somewhereElse);
        int passed = 0;
        int failed = 0;
        for (UUID tenant : somewhereElse) {
            try {
                LocalDate day = current.run(tenant, CurrentTenant.NOBODY, () -> today.day());
                passed += days.letPass(tenant, day);
            } catch (RuntimeException failure) {
                failed++;
                LOG.errorf(failure, "the day of %s did not pass", tenant);
            }
        }
        return new Night(waiting.size(), passed, failed, Duration.ofNanos(System.nanoTime() - from));
    }
}
