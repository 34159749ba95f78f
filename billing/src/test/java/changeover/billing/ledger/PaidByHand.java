package changeover.billing.ledger;

import io.agroal.api.AgroalDataSource;
import java.math.BigInteger;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What stands paid of all taxes at the end of a day, reckoned document by document with whole numbers. */
final class PaidByHand {

    private PaidByHand() {}

    private record Doc(String id, boolean credit, String credits, LocalDate day, long total) {}

    private record Part(String invoice, String tax, long amount) {}

    static long taxes(AgroalDataSource datasource, LocalDate day) {
        try (Connection connection = datasource.getConnection();
                Statement ask = connection.createStatement()) {
            List<Doc> docs = new ArrayList<>();
            ResultSet row =
                    ask.executeQuery("select invoice_id, kind, credits_id, day, total_minor from invoice_issue");
            while (row.next()) {
                docs.add(new Doc(
                        row.getString(1),
                        row.getString(2).equals("credit"),
                        row.getString(3),
                        LocalDate.parse(row.getString(4)),
                        row.getLong(5)));
            }
            List<Part> parts = new ArrayList<>();
            row = ask.executeQuery("select invoice_id, code || percent, amount_minor from invoice_tax");
            while (row.next()) {
                parts.add(new Part(row.getString(1), row.getString(2), row.getLong(3)));
            }
            Map<String, Long> paid = paid(ask, day);
            return docs.stream()
                    .filter(doc -> !doc.credit() && !doc.day().isAfter(day))
                    .mapToLong(doc -> of(doc, docs, parts, paid.getOrDefault(doc.id(), 0L), day))
                    .sum();
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }

    private static Map<String, Long> paid(Statement ask, LocalDate day) throws SQLException {
        Map<String, LocalDate> undone = new HashMap<>();
        ResultSet row = ask.executeQuery("select payment_id, day from payment_undoing");
        while (row.next()) {
            undone.put(row.getString(1), LocalDate.parse(row.getString(2)));
        }
        Map<String, Long> paid = new HashMap<>();
        row = ask.executeQuery("select payment_id, invoice_id, amount_minor, day from payment_allocation");
        while (row.next()) {
            LocalDate gone = undone.getOrDefault(row.getString(1), LocalDate.MAX);
            if (!LocalDate.parse(row.getString(4)).isAfter(day) && gone.isAfter(day)) {
                paid.merge(row.getString(2), row.getLong(3), Long::sum);
            }
        }
        return paid;
    }

    private static long of(Doc doc, List<Doc> docs, List<Part> parts, long paid, LocalDate day) {
        List<Doc> notes = docs.stream()
                .filter(note -> doc.id().equals(note.credits()) && !note.day().isAfter(day))
                .toList();
        long total = doc.total() - notes.stream().mapToLong(Doc::total).sum();
        if (total == 0) {
            return 0;
        }
        long part = Math.min(paid, total);
        long taxes = 0;
        for (Part tax :
                parts.stream().filter(one -> one.invoice().equals(doc.id())).toList()) {
            long back = parts.stream()
                    .filter(one -> one.tax().equals(tax.tax())
                            && notes.stream().anyMatch(note -> note.id().equals(one.invoice())))
                    .mapToLong(Part::amount)
                    .sum();
            BigInteger twice = BigInteger.valueOf(tax.amount() - back)
                    .multiply(BigInteger.valueOf(part))
                    .shiftLeft(1);
            taxes += twice.add(BigInteger.valueOf(total))
                    .divide(BigInteger.valueOf(total).shiftLeft(1))
                    .longValueExact();
        }
        return taxes;
    }
}
