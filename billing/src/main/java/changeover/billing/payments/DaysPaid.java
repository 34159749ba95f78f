package changeover.billing.payments;

import changeover.billing.invoices.FirstPaid;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;

/** The first day on which money for a document came in and stayed: a payment that bounced does not
 * count, and a deposit only from the day it was applied. */
@ApplicationScoped
class DaysPaid implements FirstPaid {

    @Inject
    AgroalDataSource datasource;

    @Override
    public Map<UUID, LocalDate> days(Collection<UUID> invoices) {
        Map<UUID, LocalDate> days = new HashMap<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select a.invoice_id, min(case when d.id is null then p.day else greatest(p.day, a.day) end)
                          from payment_allocation a
                          join payment p on p.tenant_id = a.tenant_id and p.id = a.payment_id
                          left join deposit d on d.tenant_id = p.tenant_id and d.payment_id = p.id
                          left join payment_undoing u on u.tenant_id = p.tenant_id and u.payment_id = p.id
                         where a.invoice_id = any (?) and u.id is null and p.kind = 'payment'
                         group by a.invoice_id""")) {
            select.setArray(1, connection.createArrayOf("uuid", invoices.toArray()));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                days.put(row.getObject(1, UUID.class), row.getObject(2, LocalDate.class));
            }
            return days;
        } catch (SQLException cause) {
            throw new IllegalStateException("the payments could not be read", cause);
        }
    }
}
