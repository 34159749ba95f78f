package changeover.billing.notices;

import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The outbox by how far its messages came, for people and programs that look after them. */
@ApplicationScoped
public class OutboxLists {

    /** A message waits for its turn, for its papers or for the printer; it failed when its last try did; else it went, or
     * was withdrawn because it was no longer true. */
    public enum State {
        WAITING("and o.withdrawn_at is null and o.sent_at is null and o.printed_at is null and o.last_error is null "),
        FAILED(
                "and o.withdrawn_at is null and o.sent_at is null and o.printed_at is null and o.last_error is not null "),
        SENT("and (o.sent_at is not null or o.printed_at is not null) "),
        WITHDRAWN("and o.withdrawn_at is not null ");

        private final String where;

        State(String where) {
            this.where = where;
        }

        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static State of(OutboxMessage message) {
            if (message.sentAt() != null || message.printedAt() != null) {
                return SENT;
            }
            if (message.withdrawnAt() != null) {
                return WITHDRAWN;
            }
            return message.lastError() == null ? WAITING : FAILED;
        }
    }

    @Inject
    AgroalDataSource database;

    /** Newest first; in every state when none is named. */
    public List<OutboxMessage> in(@Nullable State state, int from, int count) {
        return OutboxRows.read(
                database,
                (state == null ? "" : state.where) + "order by o.id desc offset ?::int limit ?::int",
                from,
                count);
    }

    public Optional<OutboxMessage> one(UUID id) {
        return OutboxRows.read(database, "and o.id = ?::uuid", id).stream().findFirst();
    }
}
