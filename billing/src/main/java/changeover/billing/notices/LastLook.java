package changeover.billing.notices;

import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.UUID;

/** The last look at a message before it leaves: what is no longer true is withdrawn. */
@ApplicationScoped
class LastLook {

    @Inject
    AgroalDataSource database;

    @Inject
    @Any
    Instance<StillTrue> judges;

    /** Whether the message may leave; when not, it is withdrawn in this transaction. */
    boolean mayLeave(UUID message) {
        try (var connection = database.getConnection();
                PreparedStatement select = connection.prepareStatement("select kind, about_id from outbox"
                        + " where tenant_id = current_tenant() and id = ?::uuid and withdrawn_at is null for update")) {
            select.setString(1, message.toString());
            try (ResultSet row = select.executeQuery()) {
                return row.next() && mayLeave(message, row.getString(1), row.getObject(2, UUID.class));
            }
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }

    private boolean mayLeave(UUID message, String kind, UUID about) throws SQLException {
        for (StillTrue judge : judges) {
            if (judge.kind().equals(kind) && !judge.holds(about)) {
                withdraw(message);
                judge.withdrawn(about);
                return false;
            }
        }
        return true;
    }

    private void withdraw(UUID message) throws SQLException {
        try (var connection = database.getConnection();
                PreparedStatement update = connection.prepareStatement(
                        "update outbox set withdrawn_at = now()"
                                + " where tenant_id = current_tenant() and id = ?::uuid and sent_at is null and printed_at is null")) {
            update.setString(1, message.toString());
            update.executeUpdate();
        }
    }
}
