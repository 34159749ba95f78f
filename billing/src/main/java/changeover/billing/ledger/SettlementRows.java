package changeover.billing.ledger;

import changeover.billing.invoices.InvoiceView;
import changeover.billing.invoices.Invoices;
import changeover.billing.ledger.Settlement.Billed;
import changeover.billing.ledger.Settlement.Waiting;
import changeover.billing.tax.ChargedTax;
import changeover.contracts.money.Money;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What was asked for an agreement's plan, paid of it and credited, document by document. */
record SettlementRows(Connection connection, Invoices invoices, Currency currency) {

    private static final String BILLED = """
            select s.invoice_id, array_agg(distinct l.position), coalesce((
                     select sum(a.amount_minor) from payment_allocation a
                      where a.invoice_id = s.invoice_id and not exists (
                        select 1 from payment_undoing u where u.payment_id = a.payment_id)), 0)::bigint,
                   coalesce((select array_agg(c.invoice_id) from invoice_issue c where c.credits_id = s.invoice_id), '{}')
              from invoice_issue s
              join invoice_line l on l.invoice_id = s.invoice_id
             where l.agreement_id = ? and l.kind = 'plan' and s.kind <> 'credit'
             group by s.invoice_id, s.day, s.series, s.number order by s.day, s.series, s.number""";

    /** Each time that an agreement was settled, the first one first; of all agreements where none is named. */
    static Map<UUID, List<Settlement.Settled>> settled(Connection connection, @Nullable UUID only, Currency currency)
            throws SQLException {
        Map<UUID, List<Settlement.Settled>> settled = new HashMap<>();
        try (PreparedStatement select = connection.prepareStatement("""
                select agreement_id, day, kept_minor from settlement
                 where ?::uuid is null or agreement_id = ? order by day, id""")) {
            select.setObject(1, only);
            select.setObject(2, only);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                settled.computeIfAbsent(row.getObject(1, UUID.class), one -> new ArrayList<>())
                        .add(new Settlement.Settled(
                                row.getObject(2, LocalDate.class), new Money(row.getLong(3), currency)));
            }
        }
        return settled;
    }

    /** The day of the customer's yes. */
    LocalDate yes(UUID agreement, LocalDate otherwise) throws SQLException {
        try (PreparedStatement select =
                connection.prepareStatement("select min(day) from agreement_acceptance where agreement_id = ?")) {
            select.setObject(1, agreement);
            ResultSet row = select.executeQuery();
            LocalDate day = row.next() ? row.getObject(1, LocalDate.class) : null;
            return day == null ? otherwise : day;
        }
    }

    List<Waiting> waiting(UUID agreement) throws SQLException {
        List<Waiting> waiting = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement("""
                select i.id, coalesce(i.instalment, 1), i.subtotal_minor from invoice i
                 where i.agreement_id = ? and i.kind = 'plan'
                   and not exists (select 1 from invoice_issue s where s.invoice_id = i.id)
                   and not exists (select 1 from invoice_discard x where x.invoice_id = i.id)
                 order by i.may_issue_from, i.id""")) {
            select.setObject(1, agreement);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                waiting.add(
                        new Waiting(row.getObject(1, UUID.class), row.getInt(2), new Money(row.getLong(3), currency)));
            }
        }
        return waiting;
    }

    static void kept(Connection connection, UUID agreement, Settlement.Settled settled, RefundWay way, String why)
            throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("""
                insert into settlement (agreement_id, day, way, kept_minor, why) values (?, ?, ?, ?, ?)""")) {
            insert.setObject(1, agreement);
            insert.setObject(2, settled.day());
            insert.setString(3, way.code());
            insert.setLong(4, settled.kept().minor());
            insert.setString(5, why);
            insert.executeUpdate();
        }
    }

    /** What fell of it, so that the plan's price before it ended stays what it was. */
    static void lessened(Connection connection, UUID instalment, Money fell, LocalDate day, String why)
            throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("""
                insert into instalment_lessening (invoice_id, day, amount_minor, why) values (?, ?, ?, ?)""")) {
            insert.setObject(1, instalment);
            insert.setObject(2, day);
            insert.setLong(3, fell.minor());
            insert.setString(4, why);
            insert.executeUpdate();
        }
    }

    List<Billed> billed(UUID agreement) throws SQLException {
        List<Row> rows = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(BILLED)) {
            select.setObject(1, agreement);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                rows.add(new Row(
                        row.getObject(1, UUID.class),
                        List.of((Integer[]) row.getArray(2).getArray()),
                        new Money(row.getLong(3), currency),
                        List.of((UUID[]) row.getArray(4).getArray())));
            }
        }
        Map<UUID, InvoiceView> views = new HashMap<>();
        invoices.views(rows.stream()
                        .flatMap(row -> Stream.concat(Stream.of(row.invoice()), row.notes().stream()))
                        .toList())
                .forEach(view -> views.put(view.id(), view));
        return rows.stream()
                .map(row -> one(
                        Objects.requireNonNull(views.get(row.invoice())),
                        row.notes().stream()
                                .map(views::get)
                                .map(Objects::requireNonNull)
                                .toList(),
                        row.positions(),
                        row.paid()))
                .toList();
    }

    /** @param positions of the plan's lines */
    private record Row(UUID invoice, List<Integer> positions, Money paid, List<UUID> notes) {}

    private Billed one(InvoiceView view, List<InvoiceView> notes, List<Integer> positions, Money paid) {
        Map<Integer, Money> left = new TreeMap<>();
        for (InvoiceView.Line line : view.lines()) {
            if (positions.contains(line.position())) {
                left.put(line.position(), line.net().minus(credited(notes, line.position())));
            }
        }
        Money total = notes.stream().map(InvoiceView::total).reduce(view.total(), Money::minus);
        return new Billed(
                view.id(),
                view.label() == null ? "" : view.label(),
                left,
                total,
                paid,
                lines -> taxes(view, notes, lines));
    }

    private Money credited(List<InvoiceView> notes, int position) {
        return notes.stream()
                .flatMap(note -> note.lines().stream())
                .filter(line -> line.position() == position)
                .map(InvoiceView.Line::net)
                .reduce(Money.zero(currency), Money::plus);
    }

    private Money taxes(InvoiceView view, List<InvoiceView> notes, Map<Integer, Money> lines) {
        Money sum = Money.zero(currency);
        for (InvoiceView.Tax tax : view.taxes()) {
            Money base = lines.entrySet().stream()
                    .filter(line -> tax.lines().contains(line.getKey()))
                    .map(Map.Entry::getValue)
                    .reduce(Money.zero(currency), Money::plus);
            if (base.isPositive()) {
                List<InvoiceView.Tax> before = notes.stream()
                        .flatMap(note -> note.taxes().stream())
                        .filter(one -> same(one, tax))
                        .toList();
                Money baseBefore = before.stream().map(InvoiceView.Tax::base).reduce(Money.zero(currency), Money::plus);
                Money taxBefore =
                        before.stream().map(InvoiceView.Tax::amount).reduce(Money.zero(currency), Money::plus);
                sum = sum.plus(
                        new ChargedTax(tax.percent(), tax.base(), tax.amount()).back(baseBefore.plus(base), taxBefore));
            }
        }
        return sum;
    }

    private static boolean same(InvoiceView.Tax one, InvoiceView.Tax other) {
        return one.code().equals(other.code())
                && one.region().equals(other.region())
                && one.percent().compareTo(other.percent()) == 0
                && one.category().equals(other.category());
    }
}
