package changeover.billing.reminders;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** What must hold of reminders: none left a minute or more after all that it asked for had been paid, credited or given up. */
public final class ReminderChecks {

    private static final String AFTER_PAYMENT = """
            with sent as (
              select o.tenant_id, o.about_id, coalesce(o.sent_at, o.printed_at) - interval '1 minute' as looked
                from outbox o where o.kind = 'reminder' and coalesce(o.sent_at, o.printed_at) is not null),
            item as (
              select s.about_id, i.open_minor, d.total_minor
                       - coalesce((select sum(a.amount_minor) from payment_allocation a
                                     left join payment_undoing u on u.tenant_id = a.tenant_id and u.payment_id = a.payment_id
                                    where a.tenant_id = i.tenant_id and a.invoice_id = i.invoice_id and a.made_at < s.looked
                                      and (u.id is null or u.made_at >= s.looked)), 0)
                       - coalesce((select sum(c.total_minor) from invoice_issue c
                                    where c.tenant_id = i.tenant_id and c.credits_id = i.invoice_id
                                      and c.made_at < s.looked), 0)
                       - coalesce((select sum(w.amount_minor) from write_off w
                                    where w.tenant_id = i.tenant_id and w.invoice_id = i.invoice_id
                                      and w.made_at < s.looked), 0) as open
                from sent s
                join reminder_item i on i.tenant_id = s.tenant_id and i.reminder_id = s.about_id
                join invoice_issue d on d.tenant_id = i.tenant_id and d.invoice_id = i.invoice_id)
            select count(*), count(*) filter (where open <= 0) from item""";

    private ReminderChecks() {}

    /** @param bad how many do not hold; nought is well */
    public record Found(String name, long rows, long bad) {}

    public static Found of(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(AFTER_PAYMENT)) {
            row.next();
            return new Found("reminders", row.getLong(1), row.getLong(2));
        }
    }
}
