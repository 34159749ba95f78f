package changeover.billing.ledger;

import changeover.billing.payments.OpenedBefore;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;

/**
 * What must hold of the reports for the accountant, whatever happened to the machine. Reads with whatever rights the
 * connection has: the owner sees all businesses, the application the one it works for.
 */
public final class LedgerChecks {

    /** The report of all days says of each document what its head says; no more of a tax is paid than is kept of it. */
    private static final String TAXES = TaxMoves.SQL + """
            , said as materialized (
              select invoice_id, sum(tax) filter (where what in ('invoiced', 'credited')) as charged, sum(tax) filter (where what = 'paid') as paid
                from moves group by invoice_id)
            select count(*), count(*) filter (where coalesce(r.charged, 0) <> s.tax_minor
                     or coalesce(r.paid, 0) not between 0 and s.tax_minor - (
                       select coalesce(sum(c.tax_minor), 0) from invoice_issue c
                        where c.tenant_id = s.tenant_id and c.credits_id = s.invoice_id))
              from invoice_issue s left join said r on r.invoice_id = s.invoice_id""";

    private static final String OPEN = """
            select coalesce(sum(greatest(0, s.total_minor - (
                     select coalesce(sum(c.total_minor), 0) from invoice_issue c
                      where c.tenant_id = s.tenant_id and c.credits_id = s.invoice_id) - (
                     select coalesce(sum(a.amount_minor), 0) from payment_allocation a
                      where a.tenant_id = s.tenant_id and a.invoice_id = s.invoice_id and not exists (
                        select 1 from payment_undoing u
                         where u.tenant_id = a.tenant_id and u.payment_id = a.payment_id)) - (
                     select coalesce(sum(w.amount_minor), 0) from write_off w
                      where w.tenant_id = s.tenant_id and w.invoice_id = s.invoice_id))), 0)::bigint
              from invoice_issue s where s.kind <> 'credit'""";

    private LedgerChecks() {}

    /** @param bad how many do not hold; nought is well */
    public record Found(String name, long rows, long bad) {}

    /**
     * The journal of all days of the one business that the connection works for: every entry balances, the receivable is what is
     * open, and what is deferred less what is unbilled is what plans have prepaid.
     */
    public static Found journal(Connection connection, Currency currency) throws SQLException {
        LocalDate last = LocalDate.of(9998, 12, 31);
        List<JournalEntry> entries = Journal.of(connection, new Period(LocalDate.of(1900, 1, 1), last), currency);
        long bad = entries.stream().filter(entry -> !entry.balances()).count();
        bad += sum(entries, AccountRole.RECEIVABLE) == open(connection) + OpenedBefore.minor(connection, last) ? 0 : 1;
        long prepaid = SoldPlanRows.of(connection, currency).stream()
                .map(plan -> PeriodEndRows.State.of(plan, last, currency))
                .mapToLong(state -> state.prepaid().minus(state.ahead()).minor())
                .sum();
        bad += -sum(entries, AccountRole.DEFERRED) - sum(entries, AccountRole.UNBILLED) == prepaid ? 0 : 1;
        return new Found("journal", entries.size(), bad);
    }

    private static long sum(List<JournalEntry> entries, AccountRole role) {
        return entries.stream()
                .flatMap(entry -> entry.postings().stream())
                .filter(one -> one.role().equals(role.code()))
                .mapToLong(one -> one.amount().minor())
                .sum();
    }

    private static long open(Connection connection) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(OPEN)) {
            ResultSet row = select.executeQuery();
            row.next();
            return row.getLong(1);
        }
    }

    public static Found taxes(Connection connection) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(TAXES)) {
            select.setObject(1, LocalDate.of(1, 1, 1));
            select.setObject(2, LocalDate.of(9999, 12, 31));
            ResultSet row = select.executeQuery();
            row.next();
            return new Found("taxes", row.getLong(1), row.getLong(2));
        }
    }
}
