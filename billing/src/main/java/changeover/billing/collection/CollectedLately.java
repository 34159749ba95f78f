package changeover.billing.collection;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.UUID;

/** What was collected from accounts in the last weeks and stands; it may still come back. */
@ApplicationScoped
public class CollectedLately {

    private static final int LOOKS_BACK = 45;
    private static final int MOST = 200;

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    public record Collected(
            UUID paymentId, UUID customerId, String customer, LocalDate day, Money amount, String documents) {}

    /** @param more whether older ones are left out */
    public record Lately(List<Collected> payments, boolean more) {}

    /** The newest first. */
    public Lately list() {
        Currency currency = businesses.current().currency();
        List<Collected> lately = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select p.id, p.customer_id, c.name, p.day, p.amount_minor,
                               coalesce((select string_agg(distinct s.label, ', ') from payment_allocation a
                                  join invoice_issue s on s.tenant_id = a.tenant_id and s.invoice_id = a.invoice_id
                                 where a.tenant_id = p.tenant_id and a.payment_id = p.id), p.note, '')
                          from payment p
                          join customer c on c.tenant_id = p.tenant_id and c.id = p.customer_id
                          left join payment_undoing u on u.tenant_id = p.tenant_id and u.payment_id = p.id
                         where p.kind = 'payment' and p.way = 'debit' and u.id is null and p.day >= ?
                         order by p.day desc, p.id desc limit ?""")) {
            select.setObject(1, today.day().minusDays(LOOKS_BACK));
            select.setInt(2, MOST + 1);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                lately.add(new Collected(
                        row.getObject(1, UUID.class),
                        row.getObject(2, UUID.class),
                        row.getString(3),
                        row.getObject(4, LocalDate.class),
                        new Money(row.getLong(5), currency),
                        row.getString(6)));
            }
            return new Lately(List.copyOf(lately.subList(0, Math.min(MOST, lately.size()))), lately.size() > MOST);
        } catch (SQLException cause) {
            throw new IllegalStateException("what was collected could not be listed", cause);
        }
    }
}
