package changeover.billing.invoices;

import changeover.billing.tax.PropertyUse;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Array;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Reads drafts, lines, taxes and places, many documents at a time. */
@ApplicationScoped
class InvoiceRows {

    /**
     * The drafts in the order asked, locked until the transaction ends when {@code lock}; ids that are none of the
     * business's are missing.
     */
    Map<UUID, Waiting> waiting(Connection connection, List<UUID> ids, boolean lock) throws SQLException {
        if (lock) {
            lock(connection, ids);
        }
        Map<UUID, List<LineRow>> lines = new HashMap<>();
        Map<UUID, Waiting> found = new HashMap<>();
        try (PreparedStatement select = connection.prepareStatement("""
                select i.id, i.kind, i.credits_id, i.customer_id, i.home_id, i.agreement_id, i.visit_id, i.instalment,
                       i.language, i.currency, i.may_issue_from, i.awaits_first_visit,
                       coalesce(i.purchase_order, c.purchase_order), i.due_days, i.reason_en, i.reason_fr, s.label, x.id is not null,
                       coalesce(c.invoices, 'each') = 'one', coalesce(c.name, ''), coalesce(c.street, ''),
                       coalesce(c.city, ''), coalesce(c.region, ''), coalesce(c.postal, ''), coalesce(c.country, ''), c.tax_number,
                       c.email, c.buyer_reference
                  from invoice i
                  left join customer c on c.tenant_id = i.tenant_id and c.id = i.customer_id
                  left join invoice_issue s on s.tenant_id = i.tenant_id and s.invoice_id = i.id
                  left join invoice_discard x on x.tenant_id = i.tenant_id and x.invoice_id = i.id
                 where i.id = any (?)""")) {
            select.setArray(1, uuids(connection, ids));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                UUID id = row.getObject(1, UUID.class);
                found.put(id, waiting(row, lines.computeIfAbsent(id, one -> new ArrayList<>())));
            }
        }
        lines(connection, found.keySet())
                .forEach(line -> lines.computeIfAbsent(line.invoiceId(), one -> new ArrayList<>())
                        .add(line));
        Map<UUID, Waiting> ordered = new LinkedHashMap<>();
        for (UUID id : ids) {
            Waiting one = found.get(id);
            if (one != null) {
                ordered.put(id, one);
            }
        }
        return ordered;
    }

    /** First the locks, then the look: what another run issued while we waited is then seen. */
    private static void lock(Connection connection, List<UUID> ids) throws SQLException {
        try (PreparedStatement lock =
                connection.prepareStatement("select id from invoice where id = any (?) order by id for update")) {
            lock.setArray(1, uuids(connection, ids));
            lock.executeQuery();
        }
    }

    private static Waiting waiting(ResultSet row, List<LineRow> lines) throws SQLException {
        return new Waiting(
                row.getObject(1, UUID.class),
                DocumentKind.of(row.getString(2)),
                row.getObject(3, UUID.class),
                row.getObject(4, UUID.class),
                row.getObject(5, UUID.class),
                row.getObject(6, UUID.class),
                row.getObject(7, UUID.class),
                row.getObject(8, Integer.class),
                row.getString(9),
                Currency.getInstance(row.getString(10)),
                row.getObject(11, LocalDate.class),
                row.getBoolean(12),
                row.getString(13),
                row.getInt(14),
                wording(row.getString(15), row.getString(16)),
                row.getString(17),
                row.getBoolean(18),
                row.getBoolean(19),
                row.getString(28),
                new Buyer(
                        row.getString(20),
                        row.getString(21),
                        row.getString(22),
                        row.getString(23),
                        row.getString(24),
                        row.getString(25),
                        row.getString(26),
                        row.getString(27)),
                lines);
    }

    List<LineRow> lines(Connection connection, Collection<UUID> invoices) throws SQLException {
        List<LineRow> lines = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement("select " + LineRow.COLUMNS
                + " from invoice_line where invoice_id = any (?) order by invoice_id, position")) {
            select.setArray(1, uuids(connection, invoices));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                lines.add(LineRow.of(row));
            }
        }
        return lines;
    }

    List<PrintedTax> taxes(Connection connection, Collection<UUID> invoices) throws SQLException {
        List<PrintedTax> taxes = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement("select " + PrintedTax.COLUMNS
                + " from invoice_tax where invoice_id = any (?) order by invoice_id, position")) {
            select.setArray(1, uuids(connection, invoices));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                taxes.add(PrintedTax.of(row));
            }
        }
        return taxes;
    }

    Map<UUID, Place> places(Connection connection, Collection<UUID> homes) throws SQLException {
        Map<UUID, Place> places = new HashMap<>();
        try (PreparedStatement select = connection.prepareStatement("""
                select id, coalesce(unit_label, ''), street, city, region, coalesce(postal, ''), country, property_use
                  from home where id = any (?)""")) {
            select.setArray(1, uuids(connection, homes));
            ResultSet row = select.executeQuery();
            while (row.next()) {
                UUID id = row.getObject(1, UUID.class);
                WorkPlace work = new WorkPlace(
                        id,
                        row.getString(2),
                        row.getString(3),
                        row.getString(4),
                        row.getString(5),
                        row.getString(6),
                        row.getString(7));
                places.put(id, new Place(work, PropertyUse.of(row.getString(8))));
            }
        }
        return places;
    }

    static Array uuids(Connection connection, Collection<UUID> ids) throws SQLException {
        return connection.createArrayOf("uuid", ids.toArray());
    }

    static @Nullable Wording wording(@Nullable String en, @Nullable String fr) {
        return en == null || fr == null ? null : new Wording(en, fr);
    }
}
