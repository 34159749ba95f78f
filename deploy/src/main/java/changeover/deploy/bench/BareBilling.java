package changeover.deploy.bench;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.openpdf.text.pdf.BaseFont;

/** The bare tools: a page of OpenPDF in the same face, and inserts of a hundred rows at a time, a transaction each. */
final class BareBilling {
    private static final int TOGETHER = 100;

    private final Connection owner;
    private final BaseFont face;

    BareBilling(Connection owner) throws SQLException, IOException {
        this.owner = owner;
        face = BarePage.fromBytes();
        try (Statement statement = owner.createStatement()) {
            statement.execute("create table bare_invoice (number bigint primary key, customer text not null,"
                    + " gst bigint not null, qst bigint not null, total bigint not null, pdf bytea not null)");
            statement.execute("alter table bare_invoice alter column pdf set storage external");
            statement.execute(
                    "create table bare_line (number bigint not null, position int not null, what text not null,"
                            + " net bigint not null, primary key (number, position))");
        }
    }

    private record Sums(long net, long gst, long qst) {
        static Sums of(int number) {
            long net = 0;
            for (int position = 1; position <= BillingShop.LINES; position++) {
                net += BillingShop.cents(number, position);
            }
            return new Sums(net, tax(net, "5"), tax(net, "9.975"));
        }

        private static long tax(long net, String percent) {
            return BigDecimal.valueOf(net)
                    .multiply(new BigDecimal(percent))
                    .divide(BigDecimal.valueOf(100), 0, RoundingMode.HALF_UP)
                    .longValueExact();
        }

        long total() {
            return net + gst + qst;
        }
    }

    void run(int first, int count) throws SQLException {
        owner.setAutoCommit(false);
        for (int from = first; from < first + count; from += TOGETHER) {
            int until = Math.min(first + count, from + TOGETHER);
            invoices(from, until);
            lines(from, until);
            owner.commit();
        }
        owner.setAutoCommit(true);
    }

    private void invoices(int from, int until) throws SQLException {
        String sql = "insert into bare_invoice values "
                + String.join(", ", Collections.nCopies(until - from, "(?, ?, ?, ?, ?, ?)"));
        try (PreparedStatement insert = owner.prepareStatement(sql)) {
            int at = 0;
            for (int number = from; number < until; number++) {
                Sums sums = Sums.of(number);
                insert.setLong(++at, number + 1L);
                insert.setString(++at, "Customer " + number);
                insert.setLong(++at, sums.gst());
                insert.setLong(++at, sums.qst());
                insert.setLong(++at, sums.total());
                insert.setBytes(++at, page(number, sums));
            }
            insert.executeUpdate();
        }
    }

    private void lines(int from, int until) throws SQLException {
        int rows = (until - from) * BillingShop.LINES;
        String sql = "insert into bare_line values " + String.join(", ", Collections.nCopies(rows, "(?, ?, ?, ?)"));
        try (PreparedStatement insert = owner.prepareStatement(sql)) {
            int at = 0;
            for (int number = from; number < until; number++) {
                for (int position = 1; position <= BillingShop.LINES; position++) {
                    insert.setLong(++at, number + 1L);
                    insert.setInt(++at, position);
                    insert.setString(++at, BillingShop.words(position));
                    insert.setLong(++at, BillingShop.cents(number, position));
                }
            }
            insert.executeUpdate();
        }
    }

    private byte[] page(int number, Sums sums) {
        List<List<String>> rows = new ArrayList<>();
        for (int position = 1; position <= BillingShop.LINES; position++) {
            String net = shown(BillingShop.cents(number, position));
            rows.add(List.of("1", BillingShop.words(position), net, net));
        }
        rows.add(List.of("", "GST 5 %", "", shown(sums.gst())));
        rows.add(List.of("", "QST 9.975 %", "", shown(sums.qst())));
        rows.add(List.of("", "Total", "", shown(sums.total())));
        return BarePage.of(
                face,
                List.of(
                        "Bench, 1 Example Street",
                        "Invoice " + (number + 1),
                        "Customer " + number + ", Example Street, Sherbrooke QC J1H 0A0"),
                rows);
    }

    private static String shown(long cents) {
        return BigDecimal.valueOf(cents, 2).toPlainString();
    }
}
