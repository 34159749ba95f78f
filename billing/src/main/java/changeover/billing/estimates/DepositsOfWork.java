package changeover.billing.estimates;

import changeover.billing.invoices.HeldForWork;
import changeover.billing.payments.Deposit;
import changeover.billing.payments.Deposits;
import changeover.contracts.money.Money;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** The deposits of accepted estimates beside the documents of the visits that do their work. */
@ApplicationScoped
class DepositsOfWork implements HeldForWork {

    private static final String KEPT = """
            select distinct i.id, x.deposit_id
              from invoice i
              join invoice_line l on l.tenant_id = i.tenant_id and l.invoice_id = i.id
              join estimate_work w on w.tenant_id = l.tenant_id and w.visit_id = l.visit_id
              join estimate_deposit x on x.tenant_id = w.tenant_id and x.estimate_id = w.estimate_id
              join deposit d on d.tenant_id = x.tenant_id and d.id = x.deposit_id
              join payment p on p.tenant_id = d.tenant_id and p.id = d.payment_id and p.customer_id = i.customer_id
             where i.id = any (?) and i.kind = 'visit'
             order by i.id""";

    @Inject
    Deposits deposits;

    /** A deposit beside a document that does its work. */
    record Kept(UUID invoice, Deposit deposit) {}

    /** Customer by customer, the oldest deposit first; those that have nothing left are missing. */
    List<Kept> kept(Connection connection, Collection<UUID> documents) throws SQLException {
        Map<UUID, List<UUID>> invoices = new HashMap<>();
        List<UUID> ids = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(KEPT)) {
            select.setArray(1, connection.createArrayOf("uuid", documents.toArray()));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                UUID deposit = row.getObject(2, UUID.class);
                ids.add(deposit);
                invoices.computeIfAbsent(deposit, one -> new ArrayList<>()).add(row.getObject(1, UUID.class));
            }
        }
        if (ids.isEmpty()) {
            return List.of();
        }
        return deposits.those(ids).stream()
                .filter(one -> one.left().isPositive())
                .sorted(Comparator.comparing(Deposit::customerId))
                .flatMap(one ->
                        invoices.getOrDefault(one.id(), List.of()).stream().map(invoice -> new Kept(invoice, one)))
                .toList();
    }

    @Override
    public Map<UUID, Money> of(Connection connection, Collection<UUID> drafts) throws SQLException {
        Map<UUID, Money> held = new HashMap<>();
        kept(connection, drafts)
                .forEach(one -> held.merge(one.invoice(), one.deposit().left(), Money::plus));
        return held;
    }
}
