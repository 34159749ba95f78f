package changeover.billing.estimates;

import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An answer that was written on the wrong estimate is taken back with its reason, while nothing hangs on it; it stays to be
 * read, and the estimate waits for its answer again.
 */
@ApplicationScoped
public class AnswersPutRight {

    private static final String HANGS = """
            select exists (select 1 from estimate_work where estimate_id = ?)
                or exists (select 1 from estimate_more where estimate_id = ?)
                or exists (select 1 from estimate_asked_more where estimate_id = ?)
                or exists (select 1 from estimate_deposit where estimate_id = ?)""";

    @Inject
    Estimates estimates;

    @Inject
    Today today;

    /** An answer that does not count any more, and why. */
    public record Undone(String how, String byName, Instant at, String why, String undoneBy, Instant undoneAt) {}

    /** @param by who takes it back */
    public Estimate takeBack(UUID id, String by, String why) {
        if (why.isBlank()) {
            throw Refusal.of("text.missing").at("why").thrown();
        }
        return estimates.inRows(connection -> {
            HeadRows.lock(connection, id);
            if (HeadRows.one(connection, id).answer() == null) {
                throw Refusal.of("estimate.no-answer-yet").thrown();
            }
            if (hangsOnIt(connection, id)) {
                throw Refusal.of("estimate.answer-is-used").thrown();
            }
            write(connection, id, by, why.strip());
            return HeadRows.one(connection, id);
        });
    }

    /** Those that were taken back, the oldest first. */
    public List<Undone> of(UUID id) {
        return estimates.inRows(connection -> {
            List<Undone> undone = new ArrayList<>();
            try (PreparedStatement select = connection.prepareStatement("""
                    select how, by_name, at, undone_why, undone_by, undone_at from estimate_answer
                     where estimate_id = ? and undone_at is not null order by id""")) {
                select.setObject(1, id);
                ResultSet row = select.executeQuery();
                while (row.next()) {
                    undone.add(new Undone(
                            text(row.getString(1)),
                            text(row.getString(2)),
                            row.getObject(3, OffsetDateTime.class).toInstant(),
                            text(row.getString(4)),
                            text(row.getString(5)),
                            row.getObject(6, OffsetDateTime.class).toInstant()));
                }
            }
            return undone;
        });
    }

    private static String text(@Nullable String read) {
        return Objects.requireNonNull(read);
    }

    private static boolean hangsOnIt(Connection connection, UUID id) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(HANGS)) {
            for (int at = 1; at <= 4; at++) {
                select.setObject(at, id);
            }
            ResultSet row = select.executeQuery();
            row.next();
            return row.getBoolean(1);
        }
    }

    private void write(Connection connection, UUID id, String by, String why) throws SQLException {
        try (PreparedStatement update = connection.prepareStatement("""
                update estimate_answer set undone_at = ?, undone_by = ?, undone_why = ?
                 where estimate_id = ? and undone_at is null""")) {
            update.setObject(1, OffsetDateTime.ofInstant(today.now(), ZoneOffset.UTC));
            update.setString(2, by);
            update.setString(3, why);
            update.setObject(4, id);
            update.executeUpdate();
        }
    }
}
