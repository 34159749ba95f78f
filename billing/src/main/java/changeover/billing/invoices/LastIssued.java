package changeover.billing.invoices;

import changeover.contracts.words.Refusal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/** The last document of a series: the next bears its day or a later one, so that numbers and days rise together. */
record LastIssued(String label, LocalDate day) {

    static Optional<LastIssued> of(Connection connection, String series) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("""
                select label, day from invoice_issue where tenant_id = current_tenant() and series = ?
                 order by number desc limit 1""")) {
            select.setString(1, series);
            ResultSet row = select.executeQuery();
            return row.next()
                    ? Optional.of(new LastIssued(row.getString(1), row.getObject(2, LocalDate.class)))
                    : Optional.empty();
        }
    }

    Optional<Refusal> refusal(LocalDate next) {
        return next.isBefore(day)
                ? Optional.of(Refusal.of("invoice.before-the-last", Map.of("label", label, "day", DaySaid.of(day))))
                : Optional.empty();
    }
}
