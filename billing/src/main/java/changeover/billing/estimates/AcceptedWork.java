package changeover.billing.estimates;

import changeover.billing.invoices.PromisedAmounts;
import changeover.contracts.money.Money;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.Currency;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;

/** The visits of accepted estimates, with what the customer's yes still leaves for each. */
@ApplicationScoped
class AcceptedWork implements PromisedAmounts {

    private static final String LEFT = """
            select w.visit_id, e.currency, sum(
                     coalesce((select m.accepted_minor from estimate_more m
                       where m.tenant_id = w.tenant_id and m.estimate_id = w.estimate_id order by m.id desc limit 1),
                       o.subtotal_minor)
                     - coalesce((select sum(case s.kind when 'credit' then -l.net_minor else l.net_minor end)
                       from estimate_work other
                       join invoice_line l on l.tenant_id = other.tenant_id and l.visit_id = other.visit_id
                       join invoice_issue s on s.tenant_id = l.tenant_id and s.invoice_id = l.invoice_id
                      where other.tenant_id = w.tenant_id and other.estimate_id = w.estimate_id
                        and other.visit_id <> w.visit_id), 0))::bigint
              from estimate_work w
              join estimate e on e.tenant_id = w.tenant_id and e.id = w.estimate_id
              join estimate_offer o on o.tenant_id = w.tenant_id and o.estimate_id = w.estimate_id
             where w.visit_id = any (?)
             group by w.visit_id, e.currency""";

    @Override
    public Map<UUID, Money> left(Connection connection, Collection<UUID> visits) throws SQLException {
        Map<UUID, Money> left = new HashMap<>();
        if (visits.isEmpty()) {
            return left;
        }
        try (PreparedStatement select = connection.prepareStatement(LEFT)) {
            select.setArray(1, connection.createArrayOf("uuid", visits.toArray()));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                Currency currency = Currency.getInstance(Objects.requireNonNull(row.getString(2)));
                left.put(row.getObject(1, UUID.class), new Money(row.getLong(3), currency));
            }
        }
        return left;
    }
}
