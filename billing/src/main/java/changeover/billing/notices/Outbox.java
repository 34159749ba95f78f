package changeover.billing.notices;

import changeover.billing.documents.Wanted;
import changeover.billing.invoices.Rows;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Ids;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The messages of the current business: written with what they are about, sent or printed after it, never twice. */
@ApplicationScoped
public class Outbox {

    @Inject
    AgroalDataSource database;

    @Inject
    CurrentTenant current;

    @Inject
    Businesses businesses;

    /** What makes two messages the same one. */
    private record Key(
            String kind,
            UUID aboutId,
            int version,
            @Nullable UUID customerId,
            String way) {
        static Key of(NewMessage message) {
            return new Key(
                    message.kind(),
                    message.aboutId(),
                    message.aboutVersion(),
                    message.to().customerId(),
                    Outbox.way(message));
        }
    }

    /** Writes messages in the business's transaction; one that was written before is left as it is. */
    public void write(Collection<NewMessage> messages) {
        if (messages.isEmpty()) {
            return;
        }
        try (var connection = database.getConnection()) {
            Set<Key> written = written(connection, messages);
            List<NewMessage> fresh =
                    messages.stream().filter(one -> written.add(Key.of(one))).toList();
            insert(
                    connection,
                    fresh,
                    new HowToAnswer(businesses.profile().facts().phone()));
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }

    /** Every message, newest first. */
    public List<OutboxMessage> newest(int from, int count) {
        return OutboxRows.read(database, "order by o.id desc offset ?::int limit ?::int", from, count);
    }

    /** What was written to a customer, newest first. */
    public List<OutboxMessage> to(UUID customerId) {
        return OutboxRows.read(database, "and o.customer_id = ?::uuid order by o.id desc", customerId);
    }

    /** What was written about an invoice, a visit or an agreement, newest first. */
    public List<OutboxMessage> about(UUID id) {
        return OutboxRows.read(database, "and o.about_id = ?::uuid order by o.id desc", id);
    }

    /** Mail that has not left yet, oldest first, with the reason where there is one. */
    public List<OutboxMessage> notSent(int count) {
        return OutboxRows.read(
                database,
                "and o.way = 'mail' and o.sent_at is null and o.withdrawn_at is null order by o.id limit ?::int",
                count);
    }

    /** Letters that nobody has printed yet, oldest first. */
    public List<OutboxMessage> toPrint() {
        return OutboxRows.read(
                database, "and o.way = 'letter' and o.printed_at is null and o.withdrawn_at is null order by o.id");
    }

    public int countNotSent() {
        return count("way = 'mail' and sent_at is null and withdrawn_at is null");
    }

    public int countToPrint() {
        return count("way = 'letter' and printed_at is null and withdrawn_at is null");
    }

    /** The letters were printed, by the person in force. Those already printed keep who printed them. */
    public int printed(Collection<UUID> ids) {
        return change(
                "update outbox set printed_at = now(), printed_by = ?::uuid where tenant_id = current_tenant()"
                        + " and way = 'letter' and printed_at is null and withdrawn_at is null and id = any(?::uuid[])",
                current.person().toString(),
                ids);
    }

    /** Mail that failed is tried at the next round, whatever its turn would be. */
    public int tryAgain(Collection<UUID> ids) {
        return change(
                "update outbox set next_try_at = now(), last_error = ? where tenant_id = current_tenant()"
                        + " and way = 'mail' and sent_at is null and withdrawn_at is null and id = any(?::uuid[])",
                "",
                ids);
    }

    private int change(String sql, String first, Collection<UUID> ids) {
        try (var connection = database.getConnection();
                PreparedStatement update = connection.prepareStatement(sql)) {
            update.setString(1, first.isEmpty() ? null : first);
            update.setArray(
                    2,
                    connection.createArrayOf(
                            "uuid", ids.stream().map(UUID::toString).toArray()));
            return update.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }

    private int count(String where) {
        try (var connection = database.getConnection();
                PreparedStatement select = connection.prepareStatement(
                        "select count(*) from outbox where tenant_id = current_tenant() and " + where);
                ResultSet row = select.executeQuery()) {
            row.next();
            return row.getInt(1);
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }

    private static Set<Key> written(Connection connection, Collection<NewMessage> messages) throws SQLException {
        String sql = """
                select kind, about_id, about_version, customer_id, way from outbox
                where tenant_id = current_tenant() and about_id = any(?::uuid[])
                """;
        Set<Key> written = new HashSet<>();
        try (PreparedStatement select = connection.prepareStatement(sql)) {
            Object[] ids =
                    messages.stream().map(one -> one.aboutId().toString()).toArray();
            select.setArray(1, connection.createArrayOf("uuid", ids));
            try (ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    written.add(new Key(
                            row.getString(1),
                            row.getObject(2, UUID.class),
                            row.getInt(3),
                            row.getObject(4, UUID.class),
                            row.getString(5)));
                }
            }
        }
        return written;
    }

    private static void insert(Connection connection, List<NewMessage> messages, HowToAnswer answer)
            throws SQLException {
        Rows rows = new Rows(
                "outbox",
                "id uuid, kind text, about_id uuid, about_version int, customer_id uuid, home_id uuid, way text,"
                        + " message_id text, to_name text, to_address text, to_postal text, language text,"
                        + " subject text, body text");
        Rows papers =
                new Rows("outbox_attachment", "outbox_id uuid, of_kind text, of_id uuid, version int, position int");
        for (NewMessage message : messages) {
            UUID id = Ids.next();
            Recipient to = message.to();
            rows.add(
                    id,
                    message.kind(),
                    message.aboutId(),
                    message.aboutVersion(),
                    to.customerId(),
                    message.homeId(),
                    way(message),
                    "<" + id + "@changeover.mail>",
                    OneLine.of(to.name()),
                    to.hasMail() ? to.address() : null,
                    String.join("\n", to.postal()),
                    to.language(),
                    OneLine.of(message.subject()),
                    answer.filled(message.body(), to));
            int position = 1;
            for (Wanted paper : message.attached()) {
                papers.add(id, paper.kind().code(), paper.ofId(), paper.version(), position++);
            }
        }
        rows.insert(connection);
        papers.insert(connection);
    }

    private static String way(NewMessage message) {
        return message.to().hasMail() ? "mail" : "letter";
    }
}
