package changeover.billing.ledger;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The books of a period in double entry: documents, payments, debts given up, what comes out of the old books, and on the last day what was earned of plans and what is kept for
 * customers. The receivable's movements of all days are what is open, the deferred ones what is prepaid.
 */
@ApplicationScoped
public class Journal {

    @Inject
    AgroalDataSource datasource;

    @Inject
    Businesses businesses;

    /** What a role was debited and credited in a period. */
    public record Moved(String role, Money debit, Money credit) {}

    public List<JournalEntry> of(Period period) {
        try (Connection connection = datasource.getConnection()) {
            return of(connection, period, businesses.current().currency());
        } catch (SQLException cause) {
            throw new IllegalStateException("the journal could not be read", cause);
        }
    }

    static List<JournalEntry> of(Connection connection, Period period, Currency currency) throws SQLException {
        List<JournalEntry> entries = new ArrayList<>();
        entries.addAll(JournalRows.documents(connection, period, currency));
        entries.addAll(JournalRows.payments(connection, period, currency));
        entries.addAll(WriteOffEntries.of(connection, period, currency));
        entries.addAll(OpeningEntries.of(connection, period, currency));
        entries.sort(Comparator.comparing(JournalEntry::day));
        entries.addAll(PeriodEndRows.earned(connection, period, currency));
        entries.addAll(PeriodEndRows.kept(connection, period, currency));
        return List.copyOf(entries);
    }

    /** Each role's movements, the roles in the order of their enumeration, taxes last. */
    public static List<Moved> moved(List<JournalEntry> entries) {
        Map<String, Moved> moved = new TreeMap<>(AccountRole.ORDER);
        for (JournalEntry entry : entries) {
            for (JournalEntry.Posting one : entry.postings()) {
                moved.merge(
                        one.role(),
                        new Moved(one.role(), one.debit(), one.credit()),
                        (a, b) -> new Moved(
                                a.role(), a.debit().plus(b.debit()), a.credit().plus(b.credit())));
            }
        }
        return List.copyOf(moved.values());
    }
}
