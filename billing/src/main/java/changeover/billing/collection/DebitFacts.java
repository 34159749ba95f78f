package changeover.billing.collection;

import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What the bank must know of documents whose customer agreed to be collected from, and how often that was done. */
@ApplicationScoped
class DebitFacts {

    @Inject
    AgroalDataSource datasource;

    /** @param debits how often it was collected, those that came back too */
    record Facts(
            UUID customerId,
            String label,
            String mandate,
            @Nullable Integer instalment,
            @Nullable Integer instalments,
            int debits,
            boolean cameBack) {}

    /** A debit that found its document paid otherwise names it in its note. */
    Map<UUID, Facts> of(Collection<UUID> invoices) {
        Map<UUID, Facts> facts = new HashMap<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select s.invoice_id, s.customer_id, s.label, m.reference, i.instalment, i.instalments, d.times, d.back
                          from invoice_issue s
                          join invoice i on i.tenant_id = s.tenant_id and i.id = s.invoice_id
                          join debit_mandate m on m.tenant_id = s.tenant_id and m.customer_id = s.customer_id
                           and not exists (select 1 from debit_mandate_end e
                                            where e.tenant_id = m.tenant_id and e.mandate_id = m.id)
                          cross join lateral (
                            select count(*)::int as times, coalesce(bool_or(u.how = 'bounced'), false) as back
                              from payment p
                              left join payment_undoing u on u.tenant_id = p.tenant_id and u.payment_id = p.id
                             where p.tenant_id = s.tenant_id and p.customer_id = s.customer_id
                               and p.kind = 'payment' and p.way = 'debit'
                               and (p.note = s.label or exists (
                                 select 1 from payment_allocation a
                                  where a.tenant_id = p.tenant_id and a.payment_id = p.id
                                    and a.invoice_id = s.invoice_id))) d
                         where s.invoice_id = any (?) and s.kind <> 'credit' order by m.id""")) {
            select.setArray(1, connection.createArrayOf("uuid", invoices.toArray()));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                facts.put(
                        row.getObject(1, UUID.class),
                        new Facts(
                                row.getObject(2, UUID.class),
                                row.getString(3),
                                row.getString(4),
                                row.getObject(5, Integer.class),
                                row.getObject(6, Integer.class),
                                row.getInt(7),
                                row.getBoolean(8)));
            }
            return facts;
        } catch (SQLException cause) {
            throw new IllegalStateException("what is to be collected could not be read", cause);
        }
    }
}
