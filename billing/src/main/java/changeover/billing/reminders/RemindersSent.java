package changeover.billing.reminders;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What was asked by reminders, and whether it left. */
@ApplicationScoped
public class RemindersSent {

    /** How far a reminder came. */
    public enum Came {
        WAITING,
        WITHDRAWN,
        LEFT
    }

    /**
     * @param way mail or letter
     * @param left when it was sent or printed
     */
    public record Row(
            UUID id,
            UUID customerId,
            String customer,
            LocalDate day,
            int daysLate,
            Tone tone,
            String documents,
            Money asked,
            String way,
            Came came,
            @Nullable Instant left) {}

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    /** The newest first; of one customer, or of all. */
    public List<Row> newest(@Nullable UUID customer, int count) {
        Currency currency = businesses.current().currency();
        List<Row> rows = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select r.id, r.customer_id, c.name, r.day, r.days_late, r.tone,
                               string_agg(s.label, ', ' order by s.series, s.number), sum(i.open_minor - i.kept_minor)::bigint,
                               coalesce(o.way, 'letter'), o.withdrawn_at, coalesce(o.sent_at, o.printed_at)
                          from reminder r
                          join customer c on c.tenant_id = r.tenant_id and c.id = r.customer_id
                          join reminder_item i on i.tenant_id = r.tenant_id and i.reminder_id = r.id
                          join invoice_issue s on s.tenant_id = i.tenant_id and s.invoice_id = i.invoice_id
                          left join outbox o on o.tenant_id = r.tenant_id and o.kind = 'reminder' and o.about_id = r.id
                         where ?::uuid is null or r.customer_id = ?::uuid
                         group by r.id, r.customer_id, c.name, r.day, r.days_late, r.tone, o.way, o.withdrawn_at, o.sent_at,
                                  o.printed_at, r.made_at
                         order by r.made_at desc, r.id limit ?""")) {
            select.setObject(1, customer);
            select.setObject(2, customer);
            select.setInt(3, count);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                rows.add(new Row(
                        row.getObject(1, UUID.class),
                        row.getObject(2, UUID.class),
                        row.getString(3),
                        row.getObject(4, LocalDate.class),
                        row.getInt(5),
                        Tone.of(row.getString(6)).orElseThrow(),
                        row.getString(7),
                        new Money(row.getLong(8), currency),
                        row.getString(9),
                        row.getTimestamp(10) != null
                                ? Came.WITHDRAWN
                                : row.getTimestamp(11) == null ? Came.WAITING : Came.LEFT,
                        row.getTimestamp(11) == null
                                ? null
                                : row.getTimestamp(11).toInstant()));
            }
            return rows;
        } catch (SQLException cause) {
            throw new IllegalStateException("the reminders could not be listed", cause);
        }
    }
}
