package changeover.billing.reminders;

import changeover.billing.fees.FeeDrafts;
import changeover.billing.notices.StillTrue;
import changeover.billing.payments.OpenByAge;
import changeover.billing.payments.Owed;
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
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * A reminder leaves only while all that it asks for is still open as it says, nothing holds it back, and what is kept for the
 * customer beyond deposits would pay as much of it as it says: whoever paid an hour ago is not reminded.
 */
@ApplicationScoped
class ReminderStillTrue implements StillTrue {

    @Inject
    AgroalDataSource datasource;

    @Inject
    Owed owed;

    @Inject
    Claiming claiming;

    @Inject
    Today today;

    @Inject
    FeeDrafts fees;

    private record Item(UUID customerId, UUID invoiceId, long openMinor, long keptMinor) {}

    @Override
    public String kind() {
        return Reminders.KIND;
    }

    @Override
    public boolean holds(UUID reminder) {
        LocalDate day = today.day();
        List<Item> items = items(reminder);
        if (items.isEmpty()) {
            return false;
        }
        UUID customer = items.getFirst().customerId();
        List<OpenByAge.Item> open = owed.open(customer, day).stream()
                .map(one -> new OpenByAge.Item(
                        one.invoiceId(), one.label(), customer, "", one.day(), one.dueDay(), one.open()))
                .toList();
        Set<Item> now = claiming.of(List.of(customer), day).each(open).stream()
                .map(claim -> new Item(
                        customer,
                        claim.item().id(),
                        claim.item().open().minor(),
                        claim.kept().minor()))
                .collect(Collectors.toSet());
        return now.containsAll(items);
    }

    /** What it asked for may be asked again, with the figures of that day. */
    @Override
    public void withdrawn(UUID reminder) {
        try (Connection connection = datasource.getConnection();
                PreparedStatement update = connection.prepareStatement(
                        "update reminder_item set withdrawn = true where reminder_id = ?")) {
            update.setObject(1, reminder);
            update.executeUpdate();
            fees.reminderWithdrawn(reminder, today.day());
        } catch (SQLException cause) {
            throw new IllegalStateException("the reminder could not be withdrawn", cause);
        }
    }

    private List<Item> items(UUID reminder) {
        List<Item> items = new ArrayList<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select r.customer_id, i.invoice_id, i.open_minor, i.kept_minor
                          from reminder_item i join reminder r on r.tenant_id = i.tenant_id and r.id = i.reminder_id
                         where i.reminder_id = ?""")) {
            select.setObject(1, reminder);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                items.add(new Item(
                        row.getObject(1, UUID.class), row.getObject(2, UUID.class), row.getLong(3), row.getLong(4)));
            }
            return items;
        } catch (SQLException cause) {
            throw new IllegalStateException("the reminder could not be read", cause);
        }
    }
}
