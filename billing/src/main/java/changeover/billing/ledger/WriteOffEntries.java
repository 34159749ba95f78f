package changeover.billing.ledger;

import static changeover.billing.ledger.AccountRole.BAD_DEBTS;
import static changeover.billing.ledger.AccountRole.RECEIVABLE;

import changeover.billing.ledger.JournalEntry.Posting;
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
import java.util.UUID;

/**
 * A debt that is given up lessens what customers owe and the taxes by their part of it; the rest is lost. What is taken back is
 * the same the other way round.
 */
final class WriteOffEntries {

    private static final String SQL = """
            select w.id, w.day, s.label, s.invoice_id, coalesce(c.name, ''), w.amount_minor,
                   w.amount_minor - coalesce((
                     select sum(x.amount_minor) from write_off_tax x
                      where x.tenant_id = w.tenant_id and x.write_off_id = w.id), 0),
                   %s, x.amount_minor
              from write_off w
              join invoice_issue s on s.tenant_id = w.tenant_id and s.invoice_id = w.invoice_id
              left join customer c on c.tenant_id = s.tenant_id and c.id = s.customer_id
              left join (write_off_tax x join invoice_tax t on t.tenant_id = x.tenant_id and t.id = x.invoice_tax_id)
                on x.tenant_id = w.tenant_id and x.write_off_id = w.id
             where w.day between ? and ?
             order by w.day, w.id, t.position""".formatted(AccountRole.OF_TAX);

    private WriteOffEntries() {}

    static List<JournalEntry> of(Connection connection, Period period, Currency currency) throws SQLException {
        List<JournalEntry> entries = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(SQL)) {
            select.setObject(1, period.from());
            select.setObject(2, period.until());
            ResultSet row = select.executeQuery();
            UUID last = null;
            while (row.next()) {
                UUID id = row.getObject(1, UUID.class);
                if (!id.equals(last)) {
                    entries.add(entry(row, currency));
                    last = id;
                }
                Money tax = new Money(row.getLong(9), currency);
                if (!tax.isZero()) {
                    entries.set(entries.size() - 1, with(entries.getLast(), new Posting(row.getString(8), tax)));
                }
            }
        }
        return entries;
    }

    private static JournalEntry entry(ResultSet row, Currency currency) throws SQLException {
        Money amount = new Money(row.getLong(6), currency);
        String customer = row.getString(5);
        return new JournalEntry(
                row.getObject(2, LocalDate.class),
                row.getString(3),
                amount.isNegative()
                        ? new Wording("Debt open again, " + customer, "Créance rouverte, " + customer)
                        : new Wording("Debt given up, " + customer, "Créance radiée, " + customer),
                row.getObject(4, UUID.class),
                List.of(
                        new Posting(RECEIVABLE.code(), amount.negated()),
                        new Posting(BAD_DEBTS.code(), new Money(row.getLong(7), currency))));
    }

    private static JournalEntry with(JournalEntry entry, Posting posting) {
        List<Posting> postings = new ArrayList<>(entry.postings());
        postings.add(posting);
        return new JournalEntry(entry.day(), entry.document(), entry.words(), entry.invoiceId(), postings);
    }
}
