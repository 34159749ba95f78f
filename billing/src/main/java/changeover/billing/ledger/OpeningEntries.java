package changeover.billing.ledger;

import static changeover.billing.ledger.AccountRole.BEFORE;
import static changeover.billing.ledger.AccountRole.RECEIVABLE;

import changeover.billing.ledger.JournalEntry.Posting;
import changeover.billing.payments.OpenedBefore;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;

/** What customers owed before comes out of the old books on the day of the take-over, in one entry. */
final class OpeningEntries {

    private static final String SQL = """
            select day, sum(amount_minor)::bigint from (
              select %s as day, o.amount_minor from opening_balance o) o
             where day between ? and ? group by day order by day""".formatted(OpenedBefore.BOOKED);

    private OpeningEntries() {}

    static List<JournalEntry> of(Connection connection, Period period, Currency currency) throws SQLException {
        List<JournalEntry> entries = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(SQL)) {
            select.setObject(1, period.from());
            select.setObject(2, period.until());
            ResultSet row = select.executeQuery();
            while (row.next()) {
                Money amount = new Money(row.getLong(2), currency);
                entries.add(new JournalEntry(
                        row.getObject(1, LocalDate.class),
                        "",
                        new Wording("Owed from before the take-over", "Dû d’avant la reprise"),
                        null,
                        List.of(new Posting(RECEIVABLE.code(), amount), new Posting(BEFORE.code(), amount.negated()))));
            }
        }
        return entries;
    }
}
