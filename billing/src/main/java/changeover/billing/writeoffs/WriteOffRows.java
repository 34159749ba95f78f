package changeover.billing.writeoffs;

import changeover.billing.tax.BadDebt;
import changeover.billing.writeoffs.WriteOff.Because;
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
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The rows of what is given up, each with its share of every tax of the document. */
final class WriteOffRows {

    /**
     * One movement.
     *
     * @param amount below nought for what is taken back
     * @param takesBack the row it takes back from
     */
    record Move(
            UUID invoiceId,
            LocalDate day,
            Money amount,
            @Nullable String why,
            @Nullable UUID takesBack,
            @Nullable UUID paymentId,
            @Nullable UUID creditId) {}

    /** A row with what of it stands. */
    record Standing(UUID id, LocalDate day, Money left) {}

    private static final String TAXES = """
            select t.id, s.total_minor - coalesce((
                     select sum(c.total_minor) from invoice_issue c where c.credits_id = s.invoice_id), 0),
                   coalesce((select sum(w.amount_minor) from write_off w where w.invoice_id = s.invoice_id), 0),
                   t.base_minor - coalesce(b.base, 0), t.amount_minor - coalesce(b.tax, 0), coalesce(x.base, 0),
                   coalesce(x.tax, 0)
              from invoice_issue s
              join invoice_tax t on t.invoice_id = s.invoice_id
              left join lateral (
                select sum(o.base_minor) as base, sum(o.amount_minor) as tax
                  from invoice_tax o join invoice_issue c on c.invoice_id = o.invoice_id
                 where c.credits_id = s.invoice_id and o.region = t.region and o.code = t.code and o.percent = t.percent
                   and o.category = t.category) b on true
              left join lateral (
                select sum(o.base_minor) as base, sum(o.amount_minor) as tax from write_off_tax o
                 where o.invoice_tax_id = t.id) x on true
             where s.invoice_id = ? order by t.position""";

    private static final String ROWS = """
            select w.id, w.invoice_id, s.label, s.customer_id, coalesce(c.name, ''), w.day, w.amount_minor, w.why, w.made_by,
                   w.payment_id, w.credit_id, case when w.amount_minor > 0 then w.amount_minor + coalesce((
                     select sum(b.amount_minor) from write_off b where b.takes_back = w.id), 0) else 0 end,
                   t.label_en, t.label_fr, x.base_minor, x.amount_minor
              from write_off w
              join invoice_issue s on s.invoice_id = w.invoice_id
              left join customer c on c.id = s.customer_id
              left join write_off_tax x on x.write_off_id = w.id
              left join invoice_tax t on t.id = x.invoice_tax_id
             where\s""";

    private WriteOffRows() {}

    static UUID insert(Connection connection, Move move) throws SQLException {
        UUID id = row(connection, move);
        shares(connection, id, move);
        return id;
    }

    private static UUID row(Connection connection, Move move) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("""
                insert into write_off (invoice_id, day, amount_minor, why, takes_back, payment_id, credit_id)
                values (?, ?, ?, ?, ?, ?, ?) returning id""")) {
            insert.setObject(1, move.invoiceId());
            insert.setObject(2, move.day());
            insert.setLong(3, move.amount().minor());
            insert.setString(4, move.why());
            insert.setObject(5, move.takesBack());
            insert.setObject(6, move.paymentId());
            insert.setObject(7, move.creditId());
            ResultSet row = insert.executeQuery();
            row.next();
            return row.getObject(1, UUID.class);
        }
    }

    private static void shares(Connection connection, UUID id, Move move) throws SQLException {
        Currency currency = move.amount().currency();
        try (PreparedStatement select = connection.prepareStatement(TAXES);
                PreparedStatement insert = connection.prepareStatement(
                        "insert into write_off_tax (write_off_id, invoice_tax_id, base_minor, amount_minor)"
                                + " values (?, ?, ?, ?)")) {
            select.setObject(1, move.invoiceId());
            ResultSet row = select.executeQuery();
            while (row.next()) {
                BadDebt debt = new BadDebt(money(row, 2, currency));
                Money given = money(row, 3, currency);
                Money base = debt.share(money(row, 4, currency), given, money(row, 6, currency));
                Money tax = debt.share(money(row, 5, currency), given, money(row, 7, currency));
                insert.setObject(1, id);
                insert.setObject(2, row.getObject(1, UUID.class));
                insert.setLong(3, base.minor());
                insert.setLong(4, tax.minor());
                insert.addBatch();
            }
            insert.executeBatch();
        }
    }

    /** What stands given up of a document, the latest first. */
    static List<Standing> standing(Connection connection, UUID invoice, Currency currency) throws SQLException {
        List<Standing> standing = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement("""
                select w.id, w.day, w.amount_minor + coalesce(sum(b.amount_minor), 0)
                  from write_off w left join write_off b on b.takes_back = w.id
                 where w.invoice_id = ? and w.amount_minor > 0
                 group by w.id, w.day, w.amount_minor having w.amount_minor + coalesce(sum(b.amount_minor), 0) > 0
                 order by w.day desc, w.id desc""")) {
            select.setObject(1, invoice);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                standing.add(new Standing(
                        row.getObject(1, UUID.class), row.getObject(2, LocalDate.class), money(row, 3, currency)));
            }
        }
        return standing;
    }

    static List<WriteOff> read(Connection connection, String where, Currency currency, Object... asked)
            throws SQLException {
        List<WriteOff> read = new ArrayList<>();
        try (PreparedStatement select =
                connection.prepareStatement(ROWS + where + " order by w.day, w.id, t.position")) {
            for (int at = 0; at < asked.length; at++) {
                select.setObject(at + 1, asked[at]);
            }
            ResultSet row = select.executeQuery();
            while (row.next()) {
                UUID id = row.getObject(1, UUID.class);
                WriteOff last = read.isEmpty() ? null : read.getLast();
                if (last != null && last.id().equals(id)) {
                    read.set(read.size() - 1, with(last, share(row, currency)));
                } else {
                    read.add(of(row, currency));
                }
            }
        }
        return List.copyOf(read);
    }

    static WriteOffs.Sum sum(Connection connection, LocalDate from, LocalDate until, Currency currency)
            throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("""
                select coalesce(sum(w.amount_minor), 0)::bigint, coalesce(sum(x.minor), 0)::bigint
                  from write_off w
                  left join (select tenant_id, write_off_id, sum(amount_minor) as minor from write_off_tax group by 1, 2) x
                    on x.tenant_id = w.tenant_id and x.write_off_id = w.id
                 where w.day between ? and ?""")) {
            select.setObject(1, from);
            select.setObject(2, until);
            ResultSet row = select.executeQuery();
            row.next();
            return new WriteOffs.Sum(money(row, 1, currency), money(row, 2, currency));
        }
    }

    private static WriteOff of(ResultSet row, Currency currency) throws SQLException {
        return new WriteOff(
                row.getObject(1, UUID.class),
                row.getObject(2, UUID.class),
                row.getString(3),
                row.getObject(4, UUID.class),
                row.getString(5),
                row.getObject(6, LocalDate.class),
                money(row, 7, currency),
                row.getString(8),
                row.getObject(9, UUID.class),
                row.getObject(10) != null ? Because.PAID : row.getObject(11) != null ? Because.CREDITED : null,
                money(row, 12, currency),
                row.getString(13) == null ? List.of() : List.of(share(row, currency)));
    }

    private static WriteOff.Share share(ResultSet row, Currency currency) throws SQLException {
        Wording label =
                new Wording(Objects.requireNonNull(row.getString(13)), Objects.requireNonNull(row.getString(14)));
        return new WriteOff.Share(label, money(row, 15, currency), money(row, 16, currency));
    }

    private static WriteOff with(WriteOff one, WriteOff.Share share) {
        List<WriteOff.Share> shares = new ArrayList<>(one.shares());
        shares.add(share);
        return new WriteOff(
                one.id(),
                one.invoiceId(),
                one.label(),
                one.customerId(),
                one.customer(),
                one.day(),
                one.amount(),
                one.why(),
                one.by(),
                one.because(),
                one.left(),
                shares);
    }

    private static Money money(ResultSet row, int at, Currency currency) throws SQLException {
        return new Money(row.getLong(at), currency);
    }
}
