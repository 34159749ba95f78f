package changeover.billing.reminders;

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
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Who is not reminded, of what, and why. */
@ApplicationScoped
public class Holds {

    private static final String ROWS = """
            select h.id, h.customer_id, h.invoice_id, s.label, h.day, h.kind, h.why, h.until_day, e.day
              from reminder_hold h
              left join reminder_hold_end e on e.tenant_id = h.tenant_id and e.hold_id = h.id
              left join invoice_issue s on s.tenant_id = h.tenant_id and s.invoice_id = h.invoice_id
             where %s order by h.id desc""";

    private static final String STANDING = "e.id is null and (h.until_day is null or h.until_day >= ?::date)";

    @Inject
    AgroalDataSource datasource;

    @Inject
    Today today;

    /** All that stand on the day. */
    public List<Hold> standing(LocalDate day) {
        return read(STANDING, day.toString());
    }

    /** A customer's, ended ones too, the newest first. */
    public List<Hold> of(UUID customer) {
        return read("h.customer_id = ?::uuid", customer.toString());
    }

    public Optional<Hold> one(UUID id) {
        return read("h.id = ?::uuid", id.toString()).stream().findFirst();
    }

    /**
     * @param invoice one document of the customer; null for all of them
     * @param until last day, in; null until it is ended
     */
    public UUID hold(UUID customer, @Nullable UUID invoice, Hold.Why kind, String why, @Nullable LocalDate until) {
        if (why.strip().length() < 3) {
            throw Refusal.of("reminder.hold-why").at("why").thrown();
        }
        if (until != null && until.isBefore(today.day())) {
            throw Refusal.of("reminder.hold-past").at("until").thrown();
        }
        try (Connection connection = datasource.getConnection();
                PreparedStatement insert = connection.prepareStatement("""
                        insert into reminder_hold (customer_id, invoice_id, day, kind, why, until_day)
                        select ?, ?, ?, ?, ?, ? where ?::uuid is null or exists (
                          select 1 from invoice_issue where invoice_id = ?::uuid and customer_id = ?::uuid)
                        returning id""")) {
            insert.setObject(1, customer);
            insert.setObject(2, invoice);
            insert.setObject(3, today.day());
            insert.setString(4, kind.code());
            insert.setString(5, why.strip());
            insert.setObject(6, until);
            insert.setObject(7, invoice);
            insert.setObject(8, invoice);
            insert.setObject(9, customer);
            ResultSet row = insert.executeQuery();
            if (!row.next()) {
                throw Refusal.of("payment.not-theirs").at("invoice").thrown();
            }
            return row.getObject(1, UUID.class);
        } catch (SQLException cause) {
            throw new IllegalStateException("the hold could not be kept", cause);
        }
    }

    public void end(UUID id) {
        if (one(id).filter(hold -> hold.ended() == null).isEmpty()) {
            throw Refusal.of("reminder.hold-ended").thrown();
        }
        try (Connection connection = datasource.getConnection();
                PreparedStatement insert =
                        connection.prepareStatement("insert into reminder_hold_end (hold_id, day) values (?, ?)")) {
            insert.setObject(1, id);
            insert.setObject(2, today.day());
            insert.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException("the hold could not be ended", cause);
        }
    }

    private List<Hold> read(String where, String value) {
        List<Hold> holds = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement(ROWS.formatted(where))) {
            select.setString(1, value);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                holds.add(new Hold(
                        row.getObject(1, UUID.class),
                        row.getObject(2, UUID.class),
                        row.getObject(3, UUID.class),
                        row.getString(4),
                        row.getObject(5, LocalDate.class),
                        Hold.Why.of(row.getString(6)).orElseThrow(),
                        row.getString(7),
                        row.getObject(8, LocalDate.class),
                        row.getObject(9, LocalDate.class)));
            }
            return holds;
        } catch (SQLException cause) {
            throw new IllegalStateException("the holds could not be read", cause);
        }
    }
}
