package changeover.billing.notices;

import changeover.billing.documents.Document;
import changeover.billing.documents.Documents;
import changeover.billing.documents.PaperKind;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Whose turn it is in the outbox: a message is lent to one sender for a while; afterwards it is anybody's again. */
@ApplicationScoped
class MailTurns {

    @Inject
    AgroalDataSource database;

    @Inject
    Documents documents;

    record Turn(
            UUID id,
            String messageId,
            String toName,
            String toAddress,
            String language,
            String subject,
            String body,
            int attempts,
            String kind,
            @Nullable UUID customerId) {}

    /** Takes the oldest messages whose papers are all made; nobody else gets them for ten minutes. */
    List<Turn> take(int limit) throws SQLException {
        String sql = """
                update outbox o set attempts = attempts + 1, next_try_at = now() + interval '10 minutes'
                where tenant_id = current_tenant() and id in (
                  select id from outbox m where tenant_id = current_tenant() and way = 'mail' and sent_at is null
                    and withdrawn_at is null and next_try_at <= now()
                    and not exists (select 1 from outbox_attachment a where a.tenant_id = m.tenant_id
                      and a.outbox_id = m.id and not exists (select 1 from document d
                        where d.tenant_id = a.tenant_id and d.of_kind = a.of_kind and d.of_id = a.of_id
                          and d.version = a.version and d.media_type = 'application/pdf'))
                  order by next_try_at, id limit ? for update skip locked)
                returning id, message_id, to_name, to_address, language, subject, body, attempts, kind, customer_id
                """;
        List<Turn> turns = new ArrayList<>();
        try (var connection = database.getConnection();
                PreparedStatement update = connection.prepareStatement(sql)) {
            update.setInt(1, limit);
            try (ResultSet row = update.executeQuery()) {
                while (row.next()) {
                    turns.add(new Turn(
                            row.getObject(1, UUID.class),
                            row.getString(2),
                            row.getString(3),
                            row.getString(4),
                            row.getString(5),
                            row.getString(6),
                            row.getString(7),
                            row.getInt(8),
                            row.getString(9),
                            row.getObject(10, UUID.class)));
                }
            }
        }
        return turns;
    }

    List<Document> papers(UUID message) throws SQLException {
        List<Document> papers = new ArrayList<>();
        try (var connection = database.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select of_kind, of_id, version from outbox_attachment
                        where tenant_id = current_tenant() and outbox_id = ?::uuid order by position
                        """)) {
            select.setString(1, message.toString());
            try (ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    documents
                            .find(PaperKind.of(row.getString(1)), row.getObject(2, UUID.class), row.getInt(3))
                            .ifPresent(papers::add);
                }
            }
        }
        return papers;
    }

    /** The papers of many messages, each in the order in which they were put to it. */
    Map<UUID, List<byte[]>> papers(Collection<UUID> messages) {
        Map<UUID, List<byte[]>> papers = new HashMap<>();
        try (var connection = database.getConnection();
                PreparedStatement select = connection.prepareStatement("""
                        select a.outbox_id, paper_bytes(d) from outbox_attachment a
                          join document d on d.tenant_id = a.tenant_id and d.of_kind = a.of_kind and d.of_id = a.of_id
                           and d.version = a.version and d.media_type = 'application/pdf'
                         where a.tenant_id = current_tenant() and a.outbox_id = any (?) order by a.outbox_id, a.position
                        """)) {
            select.setArray(1, connection.createArrayOf("uuid", messages.toArray()));
            try (ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    papers.computeIfAbsent(row.getObject(1, UUID.class), _ -> new ArrayList<>())
                            .add(row.getBytes(2));
                }
            }
            return papers;
        } catch (SQLException cause) {
            throw new IllegalStateException("the papers could not be read", cause);
        }
    }

    void sent(Turn turn) {
        change("update outbox set sent_at = clock_timestamp(), last_error = null", turn, List.of());
    }

    /** Tried again after one, two, four … minutes, at most six hours apart. */
    void failed(Turn turn, String reason) {
        change("""
                update outbox set last_error = ?, next_try_at = now()
                  + least(interval '6 hours', interval '1 minute' * power(2, least(attempts - 1, 10)))
                """, turn, List.of(reason));
    }

    private void change(String set, Turn turn, List<String> values) {
        String sql = set + " where tenant_id = current_tenant() and id = ?::uuid and sent_at is null";
        try (var connection = database.getConnection();
                PreparedStatement update = connection.prepareStatement(sql)) {
            for (int at = 0; at < values.size(); at++) {
                update.setString(at + 1, values.get(at));
            }
            update.setString(values.size() + 1, turn.id().toString());
            update.executeUpdate();
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
    }
}
