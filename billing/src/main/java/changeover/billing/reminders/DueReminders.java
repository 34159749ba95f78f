package changeover.billing.reminders;

import changeover.billing.payments.OpenByAge;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * Whom the ladder would remind on a day, and of how much: whoever is late with something that no hold keeps back, as far as what is
 * kept for them would not pay it, what is due first before the rest; a deposit pays nothing before it is applied. A payment that came back begins the days anew: nobody is sent the
 * last letter on the day the bank says no. Seven questions to the database, whatever their number.
 */
@ApplicationScoped
public class DueReminders {

    @Inject
    AgroalDataSource datasource;

    @Inject
    OpenByAge open;

    @Inject
    Ladders ladders;

    @Inject
    Claiming claiming;

    /** The highest step that was asked for a document, and when. */
    private record Last(int daysLate, LocalDate day) {}

    /** The one who is late longest first. */
    public List<DueReminder> on(LocalDate day) {
        Ladder ladder = ladders.ladder();
        if (ladder.steps().isEmpty()) {
            return List.of();
        }
        Map<UUID, Last> lasts = lasts();
        Map<UUID, LocalDate> bounced = bounced(day);
        Claims claims = claiming.on(day);
        Map<UUID, List<DueReminder.Asked>> asked = new LinkedHashMap<>();
        for (Claims.Claim claim : claims.each(open.on(day, null))) {
            OpenByAge.Item item = claim.item();
            LocalDate again = bounced.getOrDefault(item.id(), item.dueDay());
            long late = ChronoUnit.DAYS.between(again.isAfter(item.dueDay()) ? again : item.dueDay(), day);
            Last last = lasts.getOrDefault(item.id(), new Last(0, day));
            if (late > 0) {
                ladder.due(late, last.daysLate(), ChronoUnit.DAYS.between(last.day(), day))
                        .ifPresent(step -> asked.computeIfAbsent(item.customerId(), _ -> new ArrayList<>())
                                .add(new DueReminder.Asked(item, claim.kept(), step)));
            }
        }
        return asked.entrySet().stream()
                .map(one -> reminder(one.getKey(), one.getValue()))
                .toList();
    }

    private static DueReminder reminder(UUID customer, List<DueReminder.Asked> items) {
        Step highest = items.stream()
                .map(DueReminder.Asked::step)
                .max(Comparator.comparingInt(Step::daysLate))
                .orElseThrow();
        return new DueReminder(customer, items.getFirst().item().customer(), highest, items);
    }

    private Map<UUID, Last> lasts() {
        Map<UUID, Last> lasts = new HashMap<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select i.invoice_id, max(i.days_late), max(r.day)
                          from reminder_item i join reminder r on r.tenant_id = i.tenant_id and r.id = i.reminder_id
                         where not i.withdrawn group by i.invoice_id""")) {
            ResultSet row = select.executeQuery();
            while (row.next()) {
                lasts.put(row.getObject(1, UUID.class), new Last(row.getInt(2), row.getObject(3, LocalDate.class)));
            }
            return lasts;
        } catch (SQLException cause) {
            throw new IllegalStateException("the reminders could not be read", cause);
        }
    }

    /** The last day on which a payment of a document came back. */
    private Map<UUID, LocalDate> bounced(LocalDate until) {
        Map<UUID, LocalDate> bounced = new HashMap<>();
        try (Connection connection = datasource.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select a.invoice_id, max(u.day)
                          from payment_undoing u
                          join payment_allocation a on a.tenant_id = u.tenant_id and a.payment_id = u.payment_id
                         where u.how = 'bounced' and u.day <= ? group by a.invoice_id""")) {
            select.setObject(1, until);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                bounced.put(row.getObject(1, UUID.class), row.getObject(2, LocalDate.class));
            }
            return bounced;
        } catch (SQLException cause) {
            throw new IllegalStateException("the payments that came back could not be read", cause);
        }
    }
}
