package changeover.contracts.calendar;

import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Days pass for a business one by one, in order, each once, however many machines are asked to let them pass. A day's
 * work and the note that it passed, with how long it took, are one transaction; a day that fails stands open and is tried
 * again, and so does one whose machine died.
 */
@ApplicationScoped
public class Days {

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    @Inject
    AgroalDataSource datasource;

    @Inject
    Event<DayPassed> passed;

    /**
     * Lets every day pass that has not yet, up to and with a day; stops where another machine is at it.
     *
     * @param until last day that is over
     * @return how many passed here
     */
    public int letPass(UUID tenant, LocalDate until) {
        int days = 0;
        while (current.run(tenant, CurrentTenant.NOBODY, () -> letNextPass(tenant, until))) {
            days++;
        }
        return days;
    }

    private boolean letNextPass(UUID tenant, LocalDate until) throws SQLException {
        try (var connection = datasource.getConnection()) {
            if (!isOurs(connection, tenant)) {
                return false;
            }
            LocalDate last = last(connection);
            LocalDate next = last == null ? businesses.current().openedOn() : last.plusDays(1);
            if (next.isAfter(until)) {
                return false;
            }
            long from = System.nanoTime();
            passed.fire(new DayPassed(tenant.toString(), next));
            try (var insert = connection.prepareStatement("insert into day_passed (day, took_ms) values (?, ?)")) {
                insert.setObject(1, next);
                insert.setLong(2, Duration.ofNanos(System.nanoTime() - from).toMillis());
                insert.executeUpdate();
            }
            return true;
        }
    }

    /** One machine at a time lets a business's days pass; the lock goes with the transaction. */
    private static boolean isOurs(Connection connection, UUID tenant) throws SQLException {
        try (var lock = connection.prepareStatement("select pg_try_advisory_xact_lock(hashtextextended(?, 77))")) {
            lock.setString(1, "day passed " + tenant);
            try (var row = lock.executeQuery()) {
                return row.next() && row.getBoolean(1);
            }
        }
    }

    private static @Nullable LocalDate last(Connection connection) throws SQLException {
        try (var ask = connection.prepareStatement("select max(day) from day_passed");
                var row = ask.executeQuery()) {
            row.next();
            return row.getObject(1, LocalDate.class);
        }
    }
}
