package changeover.billing.reminders;

import changeover.billing.fees.FeeDrafts;
import changeover.billing.notices.StillTrue;
import changeover.billing.payments.OpenItem;
import changeover.billing.payments.Owed;
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
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * A reminder leaves only while all that it asks for is still open as it says, nothing holds it back, and nothing that is kept
 * for the customer beyond deposits would pay it: whoever paid an hour ago is not reminded.
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
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    FeeDrafts fees;

    private record Item(UUID customerId, UUID invoiceId, long openMinor) {}

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
        Claims claims = claiming.of(List.of(customer), day);
        long asked = 0;
        for (Item item : items) {
            Optional<OpenItem> now = owed.item(item.invoiceId(), day);
            if (claims.keepsBack(customer, item.invoiceId())
                    || now.map(OpenItem::open).map(Money::minor).orElse(0L) != item.openMinor()) {
                return false;
            }
            asked += item.openMinor();
        }
        return !claims.pays(customer, new Money(asked, businesses.current().currency()));
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
                        select r.customer_id, i.invoice_id, i.open_minor
                          from reminder_item i join reminder r on r.tenant_id = i.tenant_id and r.id = i.reminder_id
                         where i.reminder_id = ?""")) {
            select.setObject(1, reminder);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                items.add(new Item(row.getObject(1, UUID.class), row.getObject(2, UUID.class), row.getLong(3)));
            }
            return items;
        } catch (SQLException cause) {
            throw new IllegalStateException("the reminder could not be read", cause);
        }
    }
}
