package changeover.billing.notices;

import io.agroal.api.AgroalDataSource;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Reads messages with how many of their papers are made. */
final class OutboxRows {

    private static final String SELECT = """
            select o.id, o.kind, o.about_id, o.about_version, o.customer_id, o.home_id, o.way, o.to_name, o.to_address,
              o.to_postal, o.language, o.subject, o.body, o.made_at, o.attempts, o.next_try_at, o.last_error, o.sent_at,
              o.printed_at, o.printed_by, o.withdrawn_at, p.attached, p.missing
            from outbox o cross join lateral (
              select count(a.id) as attached, count(a.id) filter (where d.id is null) as missing
              from outbox_attachment a left join document d on d.tenant_id = a.tenant_id and d.of_kind = a.of_kind
                and d.of_id = a.of_id and d.version = a.version and d.media_type = 'application/pdf'
              where a.tenant_id = o.tenant_id and a.outbox_id = o.id) p
            where o.tenant_id = current_tenant()
            """;

    private OutboxRows() {}

    static List<OutboxMessage> read(AgroalDataSource database, String rest, Object... values) {
        List<OutboxMessage> messages = new ArrayList<>();
        try (var connection = database.getConnection();
                PreparedStatement select = connection.prepareStatement(SELECT + rest)) {
            for (int at = 0; at < values.length; at++) {
                select.setString(at + 1, values[at].toString());
            }
            try (ResultSet row = select.executeQuery()) {
                while (row.next()) {
                    messages.add(message(row));
                }
            }
        } catch (SQLException cause) {
            throw new IllegalStateException(cause);
        }
        return messages;
    }

    private static OutboxMessage message(ResultSet row) throws SQLException {
        return new OutboxMessage(
                row.getObject(1, UUID.class),
                row.getString(2),
                row.getObject(3, UUID.class),
                row.getInt(4),
                row.getObject(5, UUID.class),
                row.getObject(6, UUID.class),
                OutboxMessage.Way.valueOf(row.getString(7).toUpperCase(Locale.ROOT)),
                row.getString(8),
                row.getString(9),
                row.getString(10),
                row.getString(11),
                row.getString(12),
                row.getString(13),
                row.getTimestamp(14).toInstant(),
                row.getInt(15),
                row.getTimestamp(16).toInstant(),
                row.getString(17),
                instant(row.getTimestamp(18)),
                instant(row.getTimestamp(19)),
                row.getObject(20, UUID.class),
                instant(row.getTimestamp(21)),
                row.getInt(22),
                row.getInt(23));
    }

    private static @Nullable Instant instant(@Nullable Timestamp at) {
        return at == null ? null : at.toInstant();
    }
}
