package changeover.billing.ledger;

import static changeover.billing.ledger.AccountRole.RECEIVABLE;
import static changeover.billing.ledger.AccountRole.ROUNDING;

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
import org.jspecify.annotations.Nullable;

/** What documents and payments of a period move, as entries in the order of their days: two statements. */
final class JournalRows {

    private static final String DOCUMENTS = """
            with posted as (
              select s.invoice_id, 1 as turn, 'receivable' as role, s.total_minor as minor from invoice_issue s
               where s.day between ? and ?
              union all
              select l.invoice_id, 2, case when l.kind = 'plan' and l.agreement_id is not null then 'deferred'
                       when l.kind = 'deposit' then 'deposits'
                       when l.work = 'fee' then 'fees' else 'revenue-visit' end, -l.net_minor
                from invoice_line l join invoice_issue s on s.tenant_id = l.tenant_id and s.invoice_id = l.invoice_id
               where s.day between ? and ?
              union all
              select t.invoice_id, 3, %s, -t.amount_minor
                from invoice_tax t join invoice_issue s on s.tenant_id = t.tenant_id and s.invoice_id = t.invoice_id
               where s.day between ? and ?)
            select s.day, s.label, s.kind, coalesce(c.name, ''), s.invoice_id, p.role,
                   sum(case s.kind when 'credit' then -p.minor else p.minor end)::bigint
              from posted p
              join invoice_issue s on s.invoice_id = p.invoice_id
              left join customer c on c.tenant_id = s.tenant_id and c.id = s.customer_id
             group by s.day, s.series, s.number, s.label, s.kind, c.name, s.invoice_id, p.turn, p.role
            having sum(p.minor) <> 0
             order by s.day, s.series, s.number, p.turn, p.role""".formatted(AccountRole.OF_TAX);

    private static final String PAYMENTS = """
            select m.day, coalesce(m.reference, ''), m.kind, m.undone, coalesce(c.name, ''), m.way, m.amount_minor,
                   m.rounding_minor, m.how
              from (select p.tenant_id, p.day, p.id, p.reference, p.kind, false as undone, '' as how, p.customer_id, p.way,
                           p.amount_minor, p.rounding_minor
                      from payment p where p.day between ? and ?
                    union all
                    select p.tenant_id, u.day, p.id, p.reference, p.kind, true, u.how, p.customer_id, p.way,
                           p.amount_minor, p.rounding_minor
                      from payment_undoing u join payment p on p.tenant_id = u.tenant_id and p.id = u.payment_id
                     where u.day between ? and ?) m
              left join customer c on c.tenant_id = m.tenant_id and c.id = m.customer_id
             order by m.day, m.id, m.undone""";

    private JournalRows() {}

    static List<JournalEntry> documents(Connection connection, Period period, Currency currency) throws SQLException {
        List<JournalEntry> entries = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(DOCUMENTS)) {
            bind(select, period, 3);
            ResultSet row = select.executeQuery();
            List<Posting> postings = new ArrayList<>();
            JournalEntry head = null;
            while (row.next()) {
                UUID id = row.getObject(5, UUID.class);
                if (head == null || !id.equals(head.invoiceId())) {
                    close(entries, head, postings);
                    head = new JournalEntry(
                            row.getObject(1, LocalDate.class),
                            row.getString(2),
                            document(row.getString(3), row.getString(4)),
                            id,
                            List.of());
                }
                postings.add(new Posting(row.getString(6), new Money(row.getLong(7), currency)));
            }
            close(entries, head, postings);
        }
        return entries;
    }

    private static void close(List<JournalEntry> entries, @Nullable JournalEntry head, List<Posting> postings) {
        if (head != null) {
            entries.add(new JournalEntry(head.day(), head.document(), head.words(), head.invoiceId(), postings));
            postings.clear();
        }
    }

    private static Wording document(String kind, String customer) {
        return kind.equals("credit")
                ? new Wording("Credit note, " + customer, "Note de crédit, " + customer)
                : new Wording("Invoice, " + customer, "Facture, " + customer);
    }

    static List<JournalEntry> payments(Connection connection, Period period, Currency currency) throws SQLException {
        List<JournalEntry> entries = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(PAYMENTS)) {
            bind(select, period, 2);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                boolean refund = row.getString(3).equals("refund");
                boolean undone = row.getBoolean(4);
                long sign = refund == undone ? 1 : -1;
                Money amount = new Money(row.getLong(7), currency).times(sign);
                Money rounding = new Money(row.getLong(8), currency).times(sign);
                List<Posting> postings = new ArrayList<>();
                postings.add(new Posting(row.getString(6), amount.plus(rounding)));
                postings.add(new Posting(RECEIVABLE.code(), amount.negated()));
                if (!rounding.isZero()) {
                    postings.add(new Posting(ROUNDING.code(), rounding.negated()));
                }
                entries.add(new JournalEntry(
                        row.getObject(1, LocalDate.class),
                        row.getString(2),
                        payment(refund, undone, row.getString(9).equals("bounced"), row.getString(5)),
                        null,
                        postings));
            }
        }
        return entries;
    }

    private static Wording payment(boolean refund, boolean undone, boolean returned, String customer) {
        Wording what = refund ? new Wording("Refund", "Remboursement") : new Wording("Payment", "Paiement");
        Wording then = new Wording(returned ? " returned, " : " undone, ", returned ? " retourné, " : " annulé, ");
        return new Wording(
                what.en() + (undone ? then.en() : ", ") + customer, what.fr() + (undone ? then.fr() : ", ") + customer);
    }

    private static void bind(PreparedStatement select, Period period, int times) throws SQLException {
        for (int time = 0; time < times; time++) {
            select.setObject(2 * time + 1, period.from());
            select.setObject(2 * time + 2, period.until());
        }
    }
}
