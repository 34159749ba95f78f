package changeover.billing.invoices;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * Finds any tampering with issued documents: computes every hash anew from the frozen rows, follows the chain of each
 * series from its first number, and compares its end with the counter's.
 *
 * <p>Reads with whatever rights the connection has: the owner sees all businesses, the application the one it works for.
 */
public final class ChainCheck {

    private static final int PAGE = 500;

    private final Connection connection;
    private final List<Broken> broken = new ArrayList<>();
    private long documents;

    private ChainCheck(Connection connection) {
        this.connection = connection;
    }

    /** @param label of the document whose hash does not follow from its rows, or the series whose end is not the counter's */
    public record Broken(UUID tenant, String series, String label) {}

    /** @param documents that were looked at */
    public record Outcome(long documents, List<Broken> broken) {}

    private record Link(IssueRow issue, byte[] previous, byte[] hash) {}

    public static Outcome of(Connection connection) throws SQLException {
        ChainCheck check = new ChainCheck(connection);
        try (PreparedStatement select = connection.prepareStatement("""
                select coalesce(c.tenant_id, s.tenant_id), coalesce(c.series, s.series), c.last_hash
                  from number_counter c
                  full join (select distinct tenant_id, series from invoice_issue) s
                    on s.tenant_id = c.tenant_id and s.series = c.series
                 order by 1, 2""")) {
            ResultSet row = select.executeQuery();
            while (row.next()) {
                check.series(row.getObject(1, UUID.class), row.getString(2), row.getBytes(3));
            }
        }
        return new Outcome(check.documents, List.copyOf(check.broken));
    }

    private void series(UUID tenant, String series, byte[] end) throws SQLException {
        byte[] last = FrozenText.NOTHING;
        long after = 0;
        while (true) {
            List<Link> page = page(tenant, series, after);
            if (page.isEmpty()) {
                break;
            }
            last = follow(tenant, page, last);
            after = page.getLast().issue().number();
        }
        if (!Arrays.equals(last, end)) {
            broken.add(new Broken(tenant, series, series));
        }
    }

    private byte[] follow(UUID tenant, List<Link> page, byte[] before) throws SQLException {
        Map<UUID, List<LineRow>> lines = lines(tenant, page);
        Map<UUID, List<PrintedTax>> taxes = taxes(tenant, page);
        byte[] last = before;
        for (Link link : page) {
            UUID invoice = link.issue().invoiceId();
            byte[] now = FrozenText.hash(
                    link.previous(),
                    link.issue(),
                    lines.getOrDefault(invoice, List.of()),
                    taxes.getOrDefault(invoice, List.of()));
            documents++;
            if (!Arrays.equals(now, link.hash()) || !Arrays.equals(last, link.previous())) {
                broken.add(
                        new Broken(tenant, link.issue().series(), link.issue().label()));
            }
            last = link.hash();
        }
        return last;
    }

    private List<Link> page(UUID tenant, String series, long after) throws SQLException {
        List<Link> links = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement("select " + IssueRow.COLUMNS
                + ", s.previous_hash, s.hash from invoice_issue s"
                + " where s.tenant_id = ? and s.series = ? and s.number > ? order by s.number limit " + PAGE)) {
            select.setObject(1, tenant);
            select.setString(2, series);
            select.setLong(3, after);
            ResultSet row = select.executeQuery();
            while (row.next()) {
                links.add(
                        new Link(IssueRow.of(row), row.getBytes(IssueRow.WIDTH + 1), row.getBytes(IssueRow.WIDTH + 2)));
            }
        }
        return links;
    }

    private Map<UUID, List<LineRow>> lines(UUID tenant, List<Link> page) throws SQLException {
        Map<UUID, List<LineRow>> lines = new HashMap<>();
        try (PreparedStatement select = of(tenant, page, "select " + LineRow.COLUMNS + " from invoice_line");
                ResultSet row = select.executeQuery()) {
            while (row.next()) {
                LineRow line = LineRow.of(row);
                lines.computeIfAbsent(line.invoiceId(), one -> new ArrayList<>())
                        .add(line);
            }
        }
        return lines;
    }

    private Map<UUID, List<PrintedTax>> taxes(UUID tenant, List<Link> page) throws SQLException {
        Map<UUID, List<PrintedTax>> taxes = new HashMap<>();
        try (PreparedStatement select = of(tenant, page, "select " + PrintedTax.COLUMNS + " from invoice_tax");
                ResultSet row = select.executeQuery()) {
            while (row.next()) {
                PrintedTax tax = PrintedTax.of(row);
                taxes.computeIfAbsent(tax.invoiceId(), one -> new ArrayList<>()).add(tax);
            }
        }
        return taxes;
    }

    private PreparedStatement of(UUID tenant, List<Link> page, String what) throws SQLException {
        PreparedStatement select = connection.prepareStatement(
                what + " where tenant_id = ? and invoice_id = any (?) order by invoice_id, position");
        select.setObject(1, tenant);
        select.setArray(
                2,
                InvoiceRows.uuids(
                        connection,
                        page.stream().map(link -> link.issue().invoiceId()).toList()));
        return select;
    }
}
