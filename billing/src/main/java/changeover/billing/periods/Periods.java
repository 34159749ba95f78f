package changeover.billing.periods;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Closed days take no document and no payment any more, until the owner opens them again and says why. */
@ApplicationScoped
public class Periods {

    @Inject
    AgroalDataSource datasource;

    @Inject
    CurrentTenant current;

    @Inject
    Today today;

    /**
     * A closing.
     *
     * @param until the last day that is closed
     * @param why it was opened again; null while it is closed
     */
    public record Close(
            UUID id,
            LocalDate until,
            LocalDate on,
            @Nullable UUID by,
            @Nullable String why,
            @Nullable LocalDate reopenedOn,
            @Nullable UUID reopenedBy) {

        public boolean stands() {
            return why == null;
        }
    }

    /** The last closed day; empty when none is. */
    public Optional<LocalDate> closedUntil() {
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select max(until_day) from period_close c where not exists (
                          select 1 from period_reopening r where r.tenant_id = c.tenant_id and r.close_id = c.id)""")) {
            ResultSet row = select.executeQuery();
            row.next();
            return Optional.ofNullable(row.getObject(1, LocalDate.class));
        } catch (SQLException cause) {
            throw new IllegalStateException("the closed days could not be read", cause);
        }
    }

    /** Why nothing may bear the day; empty when it may. */
    public Optional<Refusal> refusal(LocalDate day) {
        return closedUntil()
                .filter(until -> !day.isAfter(until))
                .map(until -> Refusal.of("period.closed", Map.of("until", DayInWords.of(until)))
                        .at("day"));
    }

    /** @throws changeover.contracts.words.Refused when the day is closed */
    public void check(LocalDate day) {
        check(day, "day");
    }

    /** The same, said at another field. */
    public void check(LocalDate day, String field) {
        refusal(day).ifPresent(refusal -> {
            throw refusal.at(field).thrown();
        });
    }

    /** Closes all days up to and with this one. */
    public UUID close(LocalDate until) {
        if (until.isAfter(today.day())) {
            throw Refusal.of("period.to-come").at("until").thrown();
        }
        try (Connection connection = datasource.getConnection()) {
            lock(connection);
            if (closedUntil().filter(closed -> !until.isAfter(closed)).isPresent()) {
                throw Refusal.of("period.closed-already").at("until").thrown();
            }
            try (PreparedStatement insert =
                    connection.prepareStatement("insert into period_close (until_day) values (?) returning id")) {
                insert.setObject(1, until);
                ResultSet row = insert.executeQuery();
                row.next();
                return row.getObject(1, UUID.class);
            }
        } catch (SQLException cause) {
            throw new IllegalStateException("the period could not be closed", cause);
        }
    }

    /** Opens what that closing closed; what an earlier closing closed stays closed, and a later one is opened first. */
    public void reopen(UUID close, String why) {
        Close found = all().stream()
                .filter(one -> one.id().equals(close))
                .findFirst()
                .orElseThrow(() -> Refusal.of("period.not-found").thrown());
        if (why.strip().length() < 3) {
            throw Refusal.of("period.why").at("why").thrown();
        }
        if (!found.stands()) {
            throw Refusal.of("period.open-already").thrown();
        }
        try (Connection connection = datasource.getConnection();
                PreparedStatement insert =
                        connection.prepareStatement("insert into period_reopening (close_id, why) values (?, ?)")) {
            lock(connection);
            if (closedUntil().filter(found.until()::isBefore).isPresent()) {
                throw Refusal.of("period.later-first").thrown();
            }
            insert.setObject(1, close);
            insert.setString(2, why.strip());
            insert.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException("the period could not be opened again", cause);
        }
    }

    /** The newest first. */
    public List<Close> all() {
        List<Close> closes = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select c.id, c.until_day, (c.made_at at time zone z.zone)::date, c.made_by, r.why,
                               (r.made_at at time zone z.zone)::date, r.made_by
                          from period_close c
                          join business z on z.id = c.tenant_id
                          left join period_reopening r on r.tenant_id = c.tenant_id and r.close_id = c.id
                         order by c.made_at desc, c.id desc""")) {
            ResultSet row = select.executeQuery();
            while (row.next()) {
                closes.add(new Close(
                        row.getObject(1, UUID.class),
                        row.getObject(2, LocalDate.class),
                        row.getObject(3, LocalDate.class),
                        row.getObject(4, UUID.class),
                        row.getString(5),
                        row.getObject(6, LocalDate.class),
                        row.getObject(7, UUID.class)));
            }
            return closes;
        } catch (SQLException cause) {
            throw new IllegalStateException("the closings could not be listed", cause);
        }
    }

    /** Waits for who is writing a document or a payment, and makes them wait. */
    private void lock(Connection connection) throws SQLException {
        try (PreparedStatement lock =
                connection.prepareStatement("select pg_advisory_xact_lock(hashtextextended('closing ' || ?, 0))")) {
            lock.setString(1, current.id().toString());
            lock.executeQuery();
        }
    }
}
