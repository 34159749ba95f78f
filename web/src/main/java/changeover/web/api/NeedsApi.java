package changeover.web.api;

import changeover.contracts.catalogue.TicketNeeded;
import changeover.contracts.words.FilledOn;
import changeover.scheduling.dayplan.Need;
import changeover.scheduling.dayplan.Needs;
import changeover.scheduling.dayplan.VisitNeed;
import changeover.scheduling.visits.Visits;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalTime;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What a visit asks of whoever is sent: by its tasks and by hand. */
@Path("/api/v1/{slug}/visits/{id}/needs")
@RolesAllowed({"owner", "office"})
public class NeedsApi {

    /**
     * All of it together; what stands by hand is named apart.
     *
     * @param why why it was written by hand; null while nothing was
     */
    public record NeedDocument(
            UUID visit,
            int people,
            Set<String> tickets,
            @Nullable LocalTime earliest,
            @Nullable LocalTime latest,
            @Nullable String why) {}

    @Inject
    Needs needs;

    @Inject
    Visits visits;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public Response needs(@PathParam("id") UUID id) {
        known(id);
        return Edition.of(document(id), edition(id));
    }

    /**
     * Writes by hand, on the edition that If-Match names, 0 for the first: {@code people} (1 or 2), {@code why}, optionally
     * {@code ticket, earliest, latest}.
     */
    @PUT
    public Response write(
            @PathParam("id") UUID id,
            @HeaderParam("If-Match") String ifMatch,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "needs " + id + " " + ifMatch + body, () -> {
            known(id);
            FilledOn seen = Edition.filledOn(ifMatch);
            Asked asked = Asked.of(body, json);
            int people = asked.whole("people", 1, 2);
            Set<String> ticket =
                    asked.value("ticket") == null ? Set.of() : Set.of(asked.oneOf("ticket", TicketNeeded.KINDS));
            LocalTime earliest = asked.value("earliest") == null ? null : asked.time("earliest");
            LocalTime latest = asked.value("latest") == null ? null : asked.time("latest");
            String why = asked.text("why", 200);
            asked.nothingElse().understood();
            needs.write(id, new Need(people, ticket, earliest, latest), why, new FilledOn(seen.version() - 1));
            return Once.Answer.done(document(id));
        });
    }

    private int edition(UUID id) {
        return needs.byHand(id).map(need -> need.version() + 1).orElse(0);
    }

    private void known(UUID id) {
        if (visits.find(id).isEmpty()) {
            throw new NotFoundException();
        }
    }

    private NeedDocument document(UUID id) {
        Need need = needs.of(id);
        Optional<VisitNeed> byHand = needs.byHand(id);
        return new NeedDocument(
                id,
                need.people(),
                need.tickets(),
                need.earliest(),
                need.latest(),
                byHand.map(VisitNeed::why).orElse(null));
    }
}
