package changeover.web.session;

import changeover.contracts.digests.Sha256;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.words.Refusal;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.Response;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;

/**
 * A request with the id of its operation is done once: asked again, by the same words, it is given the same answer and
 * nothing changes. The answer is stored in the transaction of the deed, so neither is ever without the other.
 */
@ApplicationScoped
public class Once {

    /** What a deed answers: a document, and where a thing was made, its address. */
    public record Answer(
            int status, Object document, @Nullable String location) {
        public static Answer made(String location, Object document) {
            return new Answer(201, document, location);
        }

        public static Answer done(Object document) {
            return new Answer(200, document, null);
        }
    }

    private record Given(
            byte[] digest,
            int status,
            String body,
            @Nullable String location) {}

    @Inject
    AgroalDataSource rows;

    @Inject
    CurrentTenant current;

    @Inject
    ObjectMapper json;

    /**
     * Does the deed, or gives the answer that was given before.
     *
     * @param operationId the header {@code Operation-Id}, a UUID
     * @param request path and body, so that one id cannot stand for two requests
     */
    public Response answer(@Nullable String operationId, String request, Callable<Answer> deed) {
        UUID id = named(operationId);
        byte[] digest = Sha256.of(request);
        Given given = current.run(current.id(), current.person(), () -> {
            lock(id);
            Optional<Given> before = given(id);
            if (before.isPresent()) {
                return before.get();
            }
            Answer answer = deed.call();
            Given now =
                    new Given(digest, answer.status(), json.writeValueAsString(answer.document()), answer.location());
            keep(id, now);
            return now;
        });
        if (!Arrays.equals(given.digest(), digest)) {
            throw Refusal.of("session.operation-reused").thrown();
        }
        var response = Response.status(given.status()).type("application/json").entity(given.body());
        if (given.location() != null) {
            response.header("Location", given.location());
        }
        return response.build();
    }

    /** The operation's id. Refused when the header is missing or no UUID. */
    public static UUID named(@Nullable String operationId) {
        try {
            return UUID.fromString(String.valueOf(operationId));
        } catch (IllegalArgumentException notAnId) {
            throw Refusal.of("session.operation-id").thrown();
        }
    }

    /** Two of the same at once stand in line; the second then finds the first one's answer. */
    private void lock(UUID id) throws SQLException {
        try (Connection connection = rows.getConnection();
                var lock = connection.prepareStatement("select pg_advisory_xact_lock(hashtextextended(?, 7))")) {
            lock.setString(1, current.id() + ":" + id);
            lock.execute();
        }
    }

    private Optional<Given> given(UUID id) throws SQLException {
        try (Connection connection = rows.getConnection();
                var ask = connection.prepareStatement(
                        "select request_digest, status, body, location from given_answer where id = ?")) {
            ask.setObject(1, id);
            try (var row = ask.executeQuery()) {
                return row.next()
                        ? Optional.of(new Given(row.getBytes(1), row.getInt(2), row.getString(3), row.getString(4)))
                        : Optional.empty();
            }
        }
    }

    private void keep(UUID id, Given given) throws SQLException, JsonProcessingException {
        try (Connection connection = rows.getConnection();
                var insert = connection.prepareStatement(
                        "insert into given_answer (id, request_digest, status, body, location) values (?, ?, ?, ?, ?)")) {
            insert.setObject(1, id);
            insert.setBytes(2, given.digest());
            insert.setInt(3, given.status());
            insert.setString(4, given.body());
            insert.setString(5, given.location());
            insert.executeUpdate();
        }
    }
}
