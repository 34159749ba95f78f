package changeover.billing.estimates;

import changeover.billing.invoices.Draft;
import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Writes the heads of estimates. */
final class HeadRows {

    private HeadRows() {}

    static UUID insert(Connection connection, NewEstimate wanted, Draft draft, LocalDate day) throws SQLException {
        EstimateFacts facts = wanted.facts();
        try (PreparedStatement insert = connection.prepareStatement("""
                insert into estimate (home_id, customer_id, language, call_id, visit_id, follow_up_id, words, minutes, trip,
                    valid_until, deposit_minor, currency, written_on, work, contract_form)
                values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) returning id""")) {
            insert.setObject(1, wanted.homeId());
            insert.setObject(2, draft.customerId());
            insert.setString(3, draft.language());
            insert.setObject(4, wanted.callId());
            insert.setObject(5, wanted.visitId());
            insert.setObject(6, wanted.followUpId());
            insert.setString(7, facts.words().strip());
            insert.setInt(8, facts.minutes());
            insert.setBoolean(9, facts.trip());
            insert.setObject(10, facts.validUntil());
            insert.setObject(11, minor(facts.deposit()), Types.BIGINT);
            insert.setString(12, draft.currency().getCurrencyCode());
            insert.setObject(13, day);
            insert.setString(14, facts.work().code());
            insert.setString(15, facts.form().code());
            ResultSet row = insert.executeQuery();
            row.next();
            return row.getObject(1, UUID.class);
        }
    }

    static void rewrite(Connection connection, UUID id, EstimateFacts facts) throws SQLException {
        try (PreparedStatement update = connection.prepareStatement("""
                update estimate set words = ?, minutes = ?, trip = ?, valid_until = ?, deposit_minor = ?, work = ?,
                       contract_form = ?, version = version + 1
                 where id = ?""")) {
            update.setString(1, facts.words().strip());
            update.setInt(2, facts.minutes());
            update.setBoolean(3, facts.trip());
            update.setObject(4, facts.validUntil());
            update.setObject(5, minor(facts.deposit()), Types.BIGINT);
            update.setString(6, facts.work().code());
            update.setString(7, facts.form().code());
            update.setObject(8, id);
            update.executeUpdate();
        }
    }

    /** Whoever decides about the same estimate waits until the transaction ends. */
    static void lock(Connection connection, UUID id) throws SQLException {
        try (PreparedStatement lock = connection.prepareStatement("select 1 from estimate where id = ? for update")) {
            lock.setObject(1, id);
            lock.executeQuery();
        }
    }

    /** @throws changeover.contracts.words.Refused when there is none, or it is no draft any more */
    static Estimate draft(Connection connection, UUID id) throws SQLException {
        Estimate found = one(connection, id);
        if (found.offer() != null || found.answer() != null) {
            throw Refusal.of("constraint.an_offered_estimate_stands").thrown();
        }
        return found;
    }

    /** @throws changeover.contracts.words.Refused when the business has no such estimate */
    static Estimate one(Connection connection, UUID id) throws SQLException {
        return EstimateRows.read(connection, "e.id = ?", id).stream()
                .findFirst()
                .orElseThrow(() -> Refusal.of("estimate.not-found").thrown());
    }

    private static @Nullable Long minor(@Nullable Money money) {
        return money == null ? null : money.minor();
    }
}
