package changeover.billing.fees;

import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.Draft;
import changeover.billing.invoices.DraftLine;
import changeover.billing.invoices.Drafts;
import changeover.billing.pricing.Charge.Covered;
import changeover.billing.tax.ContractForm;
import changeover.billing.tax.TaxQuestion;
import changeover.billing.tax.Work;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.ManyRows;
import changeover.contracts.words.Wording;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A fee is asked for by a draft of its own: a line at the home that it is about, whose taxes the tax table answers as for any
 * line, with what the business may ask it by as its reason.
 */
@ApplicationScoped
public class FeeDrafts {

    private static final Wording WITHDRAWN =
            new Wording("The reminder was withdrawn", "Le rappel a été retiré avant son départ");

    @Inject
    AgroalDataSource datasource;

    @Inject
    Fees fees;

    @Inject
    Drafts drafts;

    @Inject
    Businesses businesses;

    /** A home and who pays for it, as a draft names them. */
    private record Place(UUID customerId, UUID homeId, String region, String language, int dueDays) {}

    /** The payment came back; empty where the place has no fee, or it was asked before. */
    public Optional<UUID> returned(UUID payment, LocalDate day) {
        Place place = read("""
                select p.customer_id, h.id, h.country, h.region, c.language, b.invoice_terms_days
                  from payment p
                  join customer c on c.tenant_id = p.tenant_id and c.id = p.customer_id
                  join business_profile b on b.tenant_id = p.tenant_id
                  join home h on h.tenant_id = p.tenant_id and h.id = coalesce(
                    (select coalesce(i.home_id, l.home_id)
                       from payment_allocation a
                       join invoice i on i.tenant_id = a.tenant_id and i.id = a.invoice_id
                       left join invoice_line l on l.tenant_id = i.tenant_id and l.invoice_id = i.id and l.position = 1
                      where a.tenant_id = p.tenant_id and a.payment_id = p.id order by a.id limit 1),
                    (select q.home_id from home_part q
                      where q.tenant_id = p.tenant_id and q.customer_id = p.customer_id and q.part = 'pays'
                      order by q.from_day desc, q.id limit 1))
                 where p.id = ? and p.kind = 'payment' and not exists (
                   select 1 from fee_charged f where f.tenant_id = p.tenant_id and f.payment_id = p.id)""", payment);
        if (place == null) {
            return Optional.empty();
        }
        return fees.on(FeeKind.RETURNED, place.region(), day).map(fee -> {
            Wording why = new Wording("Returned by the bank.", "Retourné par la banque.");
            UUID draft = drafts.write(List.of(draft(fee, place, day, why))).getFirst();
            keep(fee, draft, payment);
            return draft;
        });
    }

    /**
     * These reminders ask for it, each at the home of its invoice; where a place has no fee nothing is asked. A few statements,
     * however many there are.
     *
     * @param invoices by reminder
     */
    public void reminded(Map<UUID, UUID> invoices, LocalDate day) {
        if (invoices.isEmpty()) {
            return;
        }
        Map<UUID, Place> places = places(invoices.values());
        List<Fee> all = fees.all();
        Map<UUID, Fee> asked = new LinkedHashMap<>();
        List<Draft> wanted = new ArrayList<>();
        invoices.forEach((reminder, invoice) -> {
            Place place = places.get(invoice);
            if (place != null) {
                Fee.on(all, FeeKind.REMINDER, place.region(), day).ifPresent(fee -> {
                    asked.put(reminder, fee);
                    wanted.add(draft(fee, place, day, new Wording("Reminder.", "Rappel.")));
                });
            }
        });
        keep(asked, drafts.write(wanted));
    }

    private Map<UUID, Place> places(Collection<UUID> invoices) {
        Map<UUID, Place> places = new HashMap<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select i.customer_id, h.id, h.country, h.region, c.language, b.invoice_terms_days, i.id
                          from invoice i
                          join customer c on c.tenant_id = i.tenant_id and c.id = i.customer_id
                          join business_profile b on b.tenant_id = i.tenant_id
                          left join invoice_line l on l.tenant_id = i.tenant_id and l.invoice_id = i.id and l.position = 1
                          join home h on h.tenant_id = i.tenant_id and h.id = coalesce(i.home_id, l.home_id)
                         where i.id = any (?)""")) {
            select.setArray(1, connection.createArrayOf("uuid", invoices.toArray()));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                places.put(row.getObject(7, UUID.class), place(row));
            }
            return places;
        } catch (SQLException cause) {
            throw new IllegalStateException("the places of the fees could not be read", cause);
        }
    }

    private void keep(Map<UUID, Fee> asked, List<UUID> written) {
        ManyRows rows = ManyRows.into("fee_charged", "fee_id uuid, invoice_id uuid, reminder_id uuid");
        int at = 0;
        for (Map.Entry<UUID, Fee> one : asked.entrySet()) {
            rows.add(one.getValue().id(), written.get(at++), one.getKey());
        }
        try (Connection connection = datasource.getConnection()) {
            rows.store(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("the fees could not be noted", cause);
        }
    }

    /** The reminder did not leave: its fee, while it is a draft, is not asked for. */
    public void reminderWithdrawn(UUID reminder, LocalDate day) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement insert = connection.prepareStatement("""
                        insert into invoice_discard (invoice_id, day, why)
                        select f.invoice_id, ?, ? from fee_charged f
                         where f.reminder_id = ? and not exists (
                           select 1 from invoice_issue s where s.tenant_id = f.tenant_id and s.invoice_id = f.invoice_id)
                        on conflict on constraint a_draft_is_discarded_once do nothing""")) {
            insert.setObject(1, day);
            insert.setString(2, WITHDRAWN.in(businesses.current().locale()));
            insert.setObject(3, reminder);
            insert.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException("the fee could not be taken back", cause);
        }
    }

    private static Draft draft(Fee fee, Place place, LocalDate day, Wording why) {
        Money amount = fee.amount();
        DraftLine line = new DraftLine(
                place.homeId(),
                null,
                null,
                null,
                day,
                "other",
                fee.kind().item(),
                null,
                Covered.BILLABLE,
                Work.FEE,
                ContractForm.SEPARATE,
                fee.kind().wording(),
                new Wording(why.en() + " " + fee.source(), why.fr() + " " + fee.source()),
                BigDecimal.ONE,
                "C62",
                amount,
                BigDecimal.ZERO,
                Money.zero(amount.currency()),
                amount);
        return new Draft(
                DocumentKind.VISIT,
                null,
                place.customerId(),
                place.homeId(),
                null,
                null,
                null,
                null,
                null,
                place.language(),
                amount.currency(),
                day,
                false,
                null,
                place.dueDays(),
                null,
                List.of(line));
    }

    private void keep(Fee fee, UUID draft, UUID payment) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement insert = connection.prepareStatement(
                        "insert into fee_charged (fee_id, invoice_id, payment_id) values (?, ?, ?)")) {
            insert.setObject(1, fee.id());
            insert.setObject(2, draft);
            insert.setObject(3, payment);
            insert.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException("the fee could not be noted", cause);
        }
    }

    private @Nullable Place read(String sql, UUID id) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(sql)) {
            select.setObject(1, id);
            ResultSet row = select.executeQuery();
            return row.next() ? place(row) : null;
        } catch (SQLException cause) {
            throw new IllegalStateException("the place of the fee could not be read", cause);
        }
    }

    private static Place place(ResultSet row) throws SQLException {
        return new Place(
                row.getObject(1, UUID.class),
                row.getObject(2, UUID.class),
                TaxQuestion.region(row.getString(3), row.getString(4)),
                row.getString(5),
                row.getInt(6));
    }
}
