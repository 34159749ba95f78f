package changeover.billing.estimates;

import changeover.billing.invoices.Most;
import changeover.billing.invoices.NumberSeries;
import changeover.billing.invoices.NumberedKind;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Map;
import java.util.UUID;

/**
 * A draft is offered with the prices and taxes of the day, which then stand until its last day; from then on it has its number.
 */
@ApplicationScoped
public class Offering {

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
            Most.total(sum.total());
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
        return series.next(NumberedKind.ESTIMATE, today.day()).label();
    }

    /** One after the other: whoever takes the next number waits for the one before. */
    private void number(Connection connection, UUID id, EstimateSum sum, LocalDate day) throws SQLException {
        try (PreparedStatement lock = connection.prepareStatement(
                        "select pg_advisory_xact_lock(hashtextextended('estimate ' || current_tenant()::text, 0))");
                PreparedStatement insert = connection.prepareStatement("""
                        insert into estimate_offer (estimate_id, series, number, label, day, subtotal_minor, tax_minor,
                            total_minor)
                        values (?, ?, ?, ?, ?, ?, ?, ?)""")) {
            lock.executeQuery();
            NumberSeries.Next next = series.next(NumberedKind.ESTIMATE, day);
            insert.setObject(1, id);
            insert.setString(2, next.pattern().series(day));
            insert.setLong(3, next.number());
            insert.setString(4, next.label());
            insert.setObject(5, day);
            insert.setLong(6, sum.subtotal().minor());
            insert.setLong(7, sum.tax().minor());
            insert.setLong(8, sum.total().minor());
            insert.executeUpdate();
        }
    }
}
