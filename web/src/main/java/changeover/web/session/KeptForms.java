package changeover.web.session;

import changeover.contracts.tenants.Seal;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.agroal.api.AgroalDataSource;
import io.quarkus.agroal.DataSource;
import io.smallrye.mutiny.Uni;
import io.smallrye.mutiny.infrastructure.Infrastructure;
import io.vertx.core.http.Cookie;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.io.IOException;
import java.sql.SQLException;
import java.util.Optional;
import java.util.UUID;

/** Forms that wait for their writer to sign in again: sealed, read once, gone after a day. */
@ApplicationScoped
class KeptForms {

    /** The longest form that is kept, in bytes. */
    private static final int LONGEST = 256 * 1024;

    private static final String PLACE = "kept forms";

    @Inject
    @DataSource("lookup")
    AgroalDataSource lookup;

    @Inject
    Seal seal;

    @Inject
    ObjectMapper json;

    /** Keeps the form in hand, unless it was not written on a page of ours; answers the id to come back to. */
    Uni<Optional<UUID>> keep(RoutingContext context) {
        String action = context.normalizedPath();
        Cookie token = context.request().getCookie("csrf-token");
        context.request().resume();
        return Uni.createFrom()
                .completionStage(context.request().body().toCompletionStage())
                .emitOn(Infrastructure.getDefaultWorkerPool())
                .map(body -> {
                    KeptForm form = KeptForm.of(action, body.toString());
                    boolean ours = token != null
                            && !form.token().isEmpty()
                            && form.token().equals(token.getValue());
                    return ours && body.length() <= LONGEST ? Optional.of(store(form)) : Optional.<UUID>empty();
                });
    }

    private UUID store(KeptForm form) {
        UUID id = UUID.randomUUID();
        try (var connection = lookup.getConnection();
                var keep = connection.prepareStatement("insert into kept_form (id, sealed) values (?, ?)");
                var sweep =
                        connection.prepareStatement("delete from kept_form where kept_at < now() - interval '1 day'")) {
            keep.setObject(1, id);
            keep.setBytes(2, seal.close(json.writeValueAsBytes(form), PLACE));
            keep.executeUpdate();
            sweep.executeUpdate();
            return id;
        } catch (SQLException | JsonProcessingException cause) {
            throw new IllegalStateException("the form could not be kept", cause);
        }
    }

    /** Takes a kept form out, once; one of another business, or of another writer, stays where it is. */
    Optional<KeptForm> take(UUID id, String slug, UUID person) {
        try (var connection = lookup.getConnection();
                var ask = connection.prepareStatement("select sealed from kept_form where id = ?");
                var take = connection.prepareStatement("delete from kept_form where id = ?")) {
            ask.setObject(1, id);
            take.setObject(1, id);
            try (var row = ask.executeQuery()) {
                if (!row.next()) {
                    return Optional.empty();
                }
                KeptForm form = json.readValue(seal.open(row.getBytes(1), PLACE), KeptForm.class);
                boolean theirs = form.action().startsWith("/" + slug + "/") && form.isFor(person);
                return theirs && take.executeUpdate() == 1 ? Optional.of(form) : Optional.empty();
            }
        } catch (SQLException | IOException cause) {
            throw new IllegalStateException("the kept form could not be read", cause);
        }
    }
}
