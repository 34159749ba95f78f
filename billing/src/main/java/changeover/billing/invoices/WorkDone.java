package changeover.billing.invoices;

import changeover.scheduling.closeout.VisitClosed;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;

/**
 * Whoever went along was there as long as whoever closed the visit.
 *
 * @param people one or two
 * @param taskMinutes planned minutes of its technician's tasks that were done
 */
record WorkDone(int people, int taskMinutes) {

    static WorkDone of(Connection connection, VisitClosed closed) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("""
                select 1 + (select count(*) from appointment_second s where s.visit_id = ? and s.technician_id <> ?),
                       coalesce(sum(t.minutes), 0) from visit_task t
                  join task_outcome o on o.tenant_id = t.tenant_id and o.visit_task_id = t.id and o.outcome = 'done'
                 where t.visit_id = ? and t.who = 'technician'""")) {
            select.setObject(1, closed.visitId());
            select.setObject(2, closed.technicianId());
            select.setObject(3, closed.visitId());
            ResultSet row = select.executeQuery();
            row.next();
            return new WorkDone(row.getInt(1), row.getInt(2));
        }
    }
}
