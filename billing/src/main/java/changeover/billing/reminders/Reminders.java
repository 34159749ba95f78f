package changeover.billing.reminders;

import changeover.billing.documents.PaperKind;
import changeover.billing.documents.Wanted;
import changeover.billing.fees.FeeDrafts;
import changeover.billing.notices.FreeLetter;
import changeover.billing.notices.LettersToCustomers;
import changeover.billing.notices.LettersToCustomers.Addressed;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Ids;
import changeover.contracts.tenants.ManyRows;
import changeover.contracts.tenants.Today;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;

/** Writes the letters that are due, each step once for a document; they leave through the outbox after a last look. */
@ApplicationScoped
public class Reminders {

    /** By which the outbox knows a reminder. */
    static final String KIND = "reminder";

    @Inject
    AgroalDataSource datasource;

    @Inject
    CurrentTenant current;

    @Inject
    Today today;

    @Inject
    DueReminders due;

    @Inject
    LettersToCustomers letters;

    @Inject
    FeeDrafts fees;

    /** Everything that is due today; whoever comes second finds nothing due any more. */
    public int write() {
        lock();
        return write(due.on(today.day()));
    }

    /** What is due today to these customers. */
    public int write(Collection<UUID> customers) {
        lock();
        return write(due.on(today.day()).stream()
                .filter(one -> customers.contains(one.customerId()))
                .toList());
    }

    private int write(List<DueReminder> reminders) {
        if (reminders.isEmpty()) {
            return 0;
        }
        LocalDate day = today.day();
        ManyRows heads = ManyRows.into("reminder", "id uuid, customer_id uuid, day date, days_late int, tone text");
        ManyRows items = ManyRows.into(
                "reminder_item",
                "reminder_id uuid, invoice_id uuid, days_late int, open_minor bigint, kept_minor bigint");
        Map<Addressed, Function<String, FreeLetter>> words = new LinkedHashMap<>();
        Map<UUID, UUID> feesToAsk = new LinkedHashMap<>();
        for (DueReminder one : reminders) {
            UUID id = Ids.next();
            heads.add(
                    id,
                    one.customerId(),
                    day,
                    one.step().daysLate(),
                    one.step().tone().code());
            one.items()
                    .forEach(asked -> items.add(
                            id,
                            asked.item().id(),
                            asked.step().daysLate(),
                            asked.item().open().minor(),
                            asked.kept().minor()));
            List<Wanted> papers = one.items().stream()
                    .map(asked -> Wanted.of(PaperKind.INVOICE, asked.item().id()))
                    .toList();
            words.put(
                    new Addressed(one.customerId(), papers), language -> ReminderText.of(one, day, language, KIND, id));
            if (one.step().asksFee()) {
                feesToAsk.put(id, one.items().getFirst().item().id());
            }
        }
        try (Connection connection = datasource.getConnection()) {
            heads.store(connection);
            items.store(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("the reminders could not be written", cause);
        }
        letters.write(words);
        fees.reminded(feesToAsk, day);
        return reminders.size();
    }

    /** One at a time writes a business's reminders, and looks what is due only then. */
    private void lock() {
        try (Connection connection = datasource.getConnection();
                PreparedStatement lock = connection.prepareStatement(
                        "select pg_advisory_xact_lock(hashtextextended('reminders ' || ?, 0))")) {
            lock.setString(1, current.id().toString());
            lock.executeQuery();
        } catch (SQLException cause) {
            throw new IllegalStateException("the reminders could not be held", cause);
        }
    }
}
