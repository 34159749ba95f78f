package changeover.web.session;

import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.words.Refusal;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.function.Function;

/**
 * A form that is sent twice, by a second press, the way back or a line that tries again, is done once and leads where it led.
 * That it was done is written in the transaction of the deed, so a refused form may be sent again.
 */
@ApplicationScoped
class SentForms {

    private record Before(byte[] digest, String location) {}

    @Inject
    AgroalDataSource rows;

    @Inject
    CurrentTenant current;

    /**
     * Does the deed, unless this person's form was done before; inside the deed's transaction.
     *
     * @param where what is written down of an answer
     * @param before the answer made again of what was written down
     */
    <T> T once(Callable<T> deed, Function<T, String> where, Function<String, T> before) throws Exception {
        Optional<SentForm> sent = SentForm.inHand();
        if (sent.isEmpty()) {
            return deed.call();
        }
        SentForm form = sent.get();
        lock(form.id());
        Optional<Before> done = done(form.id());
        if (done.isEmpty()) {
            T answer = deed.call();
            keep(form, where.apply(answer));
            return answer;
        }
        if (!Arrays.equals(done.get().digest(), form.digest())) {
            throw Refusal.of("session.form-sent").thrown();
        }
        return before.apply(done.get().location());
    }

    /** Two of the same at once stand in line; the second then finds where the first one led. */
    private void lock(UUID id) throws SQLException {
        try (Connection connection = rows.getConnection();
                var lock = connection.prepareStatement("select pg_advisory_xact_lock(hashtextextended(?, 8))")) {
            lock.setString(1, current.id() + ":" + current.person() + ":" + id);
            lock.execute();
        }
    }

    private Optional<Before> done(UUID id) throws SQLException {
        try (Connection connection = rows.getConnection();
                var ask = connection.prepareStatement(
                        "select request_digest, location from sent_form where person_id = ? and id = ?")) {
            ask.setObject(1, current.person());
            ask.setObject(2, id);
            try (var row = ask.executeQuery()) {
                return row.next() ? Optional.of(new Before(row.getBytes(1), row.getString(2))) : Optional.empty();
            }
        }
    }

    private void keep(SentForm form, String location) throws SQLException {
        try (Connection connection = rows.getConnection();
                var insert = connection.prepareStatement(
                        "insert into sent_form (person_id, id, request_digest, location) values (?, ?, ?, ?)")) {
            insert.setObject(1, current.person());
            insert.setObject(2, form.id());
            insert.setBytes(3, form.digest());
            insert.setString(4, location);
            insert.executeUpdate();
        }
    }

    /** Nobody goes back to a page that was drawn a month ago. */
    void forgetOld() {
        try (Connection connection = rows.getConnection();
                var sweep = connection.prepareStatement(
                        "delete from sent_form where made_at < now() - interval '30 days'")) {
            sweep.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException("old forms could not be forgotten", cause);
        }
    }
}
