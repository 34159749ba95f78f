package changeover.billing.estimates;

import changeover.billing.invoices.NumberSeries;
import changeover.billing.invoices.NumberedKind;
import changeover.billing.invoices.SeriesPattern;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Map;
import java.util.UUID;

/**
 * A draft is offered with the prices and taxes of the day, which then stand until its last day; from then on it has its number.
 */
@ApplicationScoped
public class Offering {

    /** Of a series that began elsewhere, what its first number here follows. */
    private static final String LAST = """
            select greatest((select coalesce(max(number), 0) from estimate_offer where series = ?),
                            (select coalesce(max(last_number), 0) from number_counter where series = ?))""";

    @Inject
    Estimates estimates;

    @Inject
    NumberSeries series;

    @Inject
    Today today;

    @Inject
    Event<EstimateOffered> offered;

    /** @throws changeover.contracts.words.Refused while a price or a tax is missing, or its last day is over */
    public Estimate offer(UUID id) {
        LocalDate day = today.day();
        Estimate now = estimates.inRows(connection -> {
            HeadRows.lock(connection, id);
            Estimate draft = HeadRows.draft(connection, id);
            if (draft.validUntil().isBefore(day)) {
                throw Refusal.of("estimate.valid-in-the-past").at("validUntil").thrown();
            }
            EstimateSum sum = estimates.sum(draft);
            sum.refusal().ifPresent(refusal -> {
                throw refusal.thrown();
            });
            if (draft.deposit() != null && draft.deposit().compareTo(sum.total()) > 0) {
                throw Refusal.of("estimate.deposit-beyond-total", Map.of("most", sum.total()))
                        .at("deposit")
                        .thrown();
            }
            SumRows.write(connection, id, sum);
            number(connection, id, sum, day);
            return HeadRows.one(connection, id);
        });
        offered.fire(new EstimateOffered(
                id, now.customerId(), now.homeId(), now.label().orElseThrow(), day));
        return now;
    }

    /** How the next one would be numbered if it were offered today. */
    public String nextLabel() {
        LocalDate day = today.day();
        SeriesPattern pattern = series.pattern(NumberedKind.ESTIMATE);
        return pattern.label(day, estimates.inRows(connection -> last(connection, pattern.series(day))) + 1);
    }

    private static long last(Connection connection, String name) throws SQLException {
        try (PreparedStatement last = connection.prepareStatement(LAST)) {
            last.setString(1, name);
            last.setString(2, name);
            ResultSet row = last.executeQuery();
            row.next();
            return row.getLong(1);
        }
    }

    /** One after the other: whoever takes the next number waits for the one before. */
    private void number(Connection connection, UUID id, EstimateSum sum, LocalDate day) throws SQLException {
        SeriesPattern pattern = series.pattern(NumberedKind.ESTIMATE);
        String name = pattern.series(day);
        try (PreparedStatement lock = connection.prepareStatement(
                        "select pg_advisory_xact_lock(hashtextextended('estimate ' || current_tenant()::text, 0))");
                PreparedStatement insert = connection.prepareStatement("""
                        insert into estimate_offer (estimate_id, series, number, label, day, subtotal_minor, tax_minor,
                            total_minor)
                        values (?, ?, ?, ?, ?, ?, ?, ?)""")) {
            lock.executeQuery();
            long number = last(connection, name) + 1;
            insert.setObject(1, id);
            insert.setString(2, name);
            insert.setLong(3, number);
            insert.setString(4, pattern.label(day, number));
            insert.setObject(5, day);
            insert.setLong(6, sum.subtotal().minor());
            insert.setLong(7, sum.tax().minor());
            insert.setLong(8, sum.total().minor());
            insert.executeUpdate();
        }
    }
}
