package changeover.billing.collection;

import changeover.billing.payments.NewPayment;
import changeover.billing.payments.OpenByAge;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Way;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
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
import java.util.Collection;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What is to be collected up to a day from those who agreed to it, and that it was collected. */
@ApplicationScoped
public class Collecting {

    private static final int LOOKS_BACK = 45;

    @Inject
    AgroalDataSource datasource;

    @Inject
    OpenByAge open;

    @Inject
    Payments payments;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    CurrentTenant current;

    /**
     * A document to be collected.
     *
     * @param instalment which of how many, or null for another document
     * @param cameBack whether one for it came back before
     */
    public record Due(
            OpenByAge.Item item,
            String mandate,
            @Nullable Integer instalment,
            @Nullable Integer instalments,
            boolean cameBack) {}

    /** One that was collected lately and stands; it may still come back. */
    public record Collected(
            UUID paymentId, UUID customerId, String customer, LocalDate day, Money amount, String documents) {}

    private record Facts(
            String mandate,
            @Nullable Integer instalment,
            @Nullable Integer instalments,
            boolean cameBack) {}

    /** Due first comes first. */
    public List<Due> until(LocalDate day) {
        List<OpenByAge.Item> items = open.on(today.day(), null).stream()
                .filter(item -> !item.dueDay().isAfter(day))
                .toList();
        Map<UUID, Facts> facts = facts(items.stream().map(OpenByAge.Item::id).toList());
        return items.stream()
                .filter(item -> facts.containsKey(item.id()))
                .map(item -> due(item, facts))
                .toList();
    }

    private static Due due(OpenByAge.Item item, Map<UUID, Facts> facts) {
        Facts known = Objects.requireNonNull(facts.get(item.id()));
        return new Due(item, known.mandate(), known.instalment(), known.instalments(), known.cameBack());
    }

    /** Notes these as collected on the day, a payment a document; what is no longer open is left out. */
    public int collected(Collection<UUID> invoices, LocalDate day) {
        lock();
        int count = 0;
        for (Due one : until(LocalDate.of(9998, 12, 31))) {
            if (invoices.contains(one.item().id())) {
                payments.take(new NewPayment(
                        one.item().customerId(),
                        day,
                        Way.DEBIT,
                        one.item().open(),
                        one.mandate(),
                        null,
                        List.of(new NewPayment.Part(one.item().id(), one.item().open()))));
                count++;
            }
        }
        if (count == 0) {
            throw Refusal.of("collection.none").thrown();
        }
        return count;
    }

    /** One after the other: what somebody else has just collected is no longer open. */
    private void lock() {
        try (Connection connection = datasource.getConnection();
                PreparedStatement lock = connection.prepareStatement(
                        "select pg_advisory_xact_lock(hashtextextended('collecting ' || ?, 0))")) {
            lock.setString(1, current.id().toString());
            lock.executeQuery();
        } catch (SQLException cause) {
            throw new IllegalStateException("collecting could not be held", cause);
        }
    }

    /** The newest first. */
    public List<Collected> lately() {
        Currency currency = businesses.current().currency();
        List<Collected> lately = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select p.id, p.customer_id, c.name, p.day, p.amount_minor,
                               (select string_agg(distinct s.label, ', ') from payment_allocation a
                                  join invoice_issue s on s.tenant_id = a.tenant_id and s.invoice_id = a.invoice_id
                                 where a.tenant_id = p.tenant_id and a.payment_id = p.id)
                          from payment p
                          join customer c on c.tenant_id = p.tenant_id and c.id = p.customer_id
                          left join payment_undoing u on u.tenant_id = p.tenant_id and u.payment_id = p.id
                         where p.kind = 'payment' and p.way = 'debit' and u.id is null and p.day >= ?
                         order by p.day desc, p.id desc limit 200""")) {
            select.setObject(1, today.day().minusDays(LOOKS_BACK));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                lately.add(new Collected(
                        row.getObject(1, UUID.class),
                        row.getObject(2, UUID.class),
                        row.getString(3),
                        row.getObject(4, LocalDate.class),
                        new Money(row.getLong(5), currency),
                        row.getString(6) == null ? "" : row.getString(6)));
            }
            return lately;
        } catch (SQLException cause) {
            throw new IllegalStateException("what was collected could not be listed", cause);
        }
    }

    /** Of those whose customer agreed to it. */
    private Map<UUID, Facts> facts(List<UUID> invoices) {
        Map<UUID, Facts> facts = new HashMap<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select i.id, m.reference, i.instalment, i.instalments, exists (
                                 select 1 from payment_allocation a
                                   join payment p on p.tenant_id = a.tenant_id and p.id = a.payment_id and p.way = 'debit'
                                   join payment_undoing u on u.tenant_id = p.tenant_id and u.payment_id = p.id
                                    and u.how = 'bounced'
                                  where a.tenant_id = i.tenant_id and a.invoice_id = i.id)
                          from invoice i
                          join debit_mandate m on m.tenant_id = i.tenant_id and m.customer_id = i.customer_id
                           and not exists (select 1 from debit_mandate_end e
                                            where e.tenant_id = m.tenant_id and e.mandate_id = m.id)
                         where i.id = any (?) order by m.id""")) {
            select.setArray(1, connection.createArrayOf("uuid", invoices.toArray()));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                facts.put(
                        row.getObject(1, UUID.class),
                        new Facts(
                                row.getString(2),
                                row.getObject(3, Integer.class),
                                row.getObject(4, Integer.class),
                                row.getBoolean(5)));
            }
            return facts;
        } catch (SQLException cause) {
            throw new IllegalStateException("what is to be collected could not be read", cause);
        }
    }
}
