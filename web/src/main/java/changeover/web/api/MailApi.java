package changeover.web.api;

import changeover.billing.notices.Outbox;
import changeover.billing.notices.OutboxLists;
import changeover.billing.notices.OutboxMessage;
import changeover.contracts.words.Refusal;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The outbox: what waits, what went and what failed, by mail and on paper. */
@Path("/api/v1/{slug}/mail")
@RolesAllowed({"owner", "office"})
public class MailApi {

    /**
     * A message as a line of the list.
     *
     * @param state waiting, sent (or printed), failed (it is tried again at its turn), withdrawn (no longer true)
     * @param standing the same more closely: waits_for_papers, to_send, tries_again, sent, to_print, printed, withdrawn
     * @param way mail or letter
     * @param lastError what the mail server said last, in its own words
     */
    public record MailDocument(
            UUID id,
            String state,
            String standing,
            String way,
            String kind,
            UUID about,
            @Nullable UUID customer,
            String to,
            @Nullable String address,
            String language,
            String subject,
            Instant written,
            int attempts,
            @Nullable String lastError,
            @Nullable Instant sent,
            @Nullable Instant printed,
            int papers,
            int papersMissing) {}

    /** A message with all its words. */
    public record MessageDocument(MailDocument mail, String postal, String body) {}

    @Inject
    OutboxLists lists;

    @Inject
    Outbox outbox;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** Newest first. */
    @GET
    @Transactional
    public List<MailDocument> list(
            @Nullable @QueryParam("state") String said,
            @QueryParam("skip") @DefaultValue("0") int skip,
            @QueryParam("count") @DefaultValue("200") int count) {
        String state = AskedInQuery.oneOf("state", said, Set.of("waiting", "sent", "failed", "withdrawn"));
        return lists
                .in(
                        state == null ? null : OutboxLists.State.valueOf(state.toUpperCase(Locale.ROOT)),
                        Math.clamp(skip, 0, 1_000_000),
                        Math.clamp(count, 1, 1000))
                .stream()
                .map(MailApi::document)
                .toList();
    }

    @GET
    @Path("{id}")
    @Transactional
    public MessageDocument one(@PathParam("id") UUID id) {
        OutboxMessage message = found(id);
        return new MessageDocument(document(message), message.toPostal(), message.body());
    }

    /** A letter came out of the printer: it is stamped with the time and the person. */
    @POST
    @Path("{id}/printing")
    public Response printed(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "printing " + id + body, () -> {
            OutboxMessage message = found(id);
            Asked.of(body, json).nothingElse().understood();
            if (message.way() != OutboxMessage.Way.LETTER) {
                throw Refusal.of("mail.no-letter").thrown();
            }
            outbox.printed(List.of(id));
            return Once.Answer.done(document(found(id)));
        });
    }

    /** Mail that failed is tried at the next round, whatever its turn would be. */
    @POST
    @Path("{id}/attempt")
    public Response tryAgain(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "attempt " + id + body, () -> {
            OutboxMessage message = found(id);
            Asked.of(body, json).nothingElse().understood();
            if (OutboxLists.State.of(message) != OutboxLists.State.FAILED) {
                throw Refusal.of("mail.not-failed").thrown();
            }
            outbox.tryAgain(List.of(id));
            return Once.Answer.done(document(found(id)));
        });
    }

    private OutboxMessage found(UUID id) {
        return lists.one(id).orElseThrow(NotFoundException::new);
    }

    private static MailDocument document(OutboxMessage message) {
        return new MailDocument(
                message.id(),
                OutboxLists.State.of(message).code(),
                message.standing().name().toLowerCase(Locale.ROOT),
                message.way().name().toLowerCase(Locale.ROOT),
                message.kind(),
                message.aboutId(),
                message.customerId(),
                message.toName(),
                message.toAddress(),
                message.language(),
                message.subject(),
                message.writtenAt(),
                message.attempts(),
                message.lastError(),
                message.sentAt(),
                message.printedAt(),
                message.attached(),
                message.missing());
    }
}
