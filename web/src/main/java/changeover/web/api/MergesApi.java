package changeover.web.api;

import changeover.contracts.merging.HomeMerges;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** Homes that are one, over the API: merged, and undone for a day. */
@Path("/api/v1/{slug}/merges")
@RolesAllowed({"owner", "office"})
public class MergesApi {

    /** @param home the one that lives on */
    public record MergeDocument(
            UUID id, UUID home, String homeLine, UUID other, String otherLine, Instant at, Instant undoableUntil) {}

    @Inject
    HomeMerges merges;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** Those that stand, the latest first. */
    @GET
    @Transactional
    public List<MergeDocument> all() {
        return merges.all().stream().map(MergesApi::document).toList();
    }

    /** {@code home} lives on, {@code other} goes into it. */
    @POST
    public Response merge(@HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "merges " + body, () -> {
            Asked asked = Asked.of(body, json);
            UUID home = asked.id("home");
            UUID other = asked.id("other");
            asked.nothingElse().understood();
            return Once.Answer.done(document(found(merges.merge(home, other))));
        });
    }

    /** Exactly what came along goes back, within a day. */
    @POST
    @Path("{merge}/undoing")
    public Response undo(@PathParam("merge") UUID merge, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "merges/" + merge + "/undoing " + body, () -> {
            MergeDocument document = document(found(merge));
            Asked.of(body, json).nothingElse().understood();
            merges.undo(merge);
            return Once.Answer.done(document);
        });
    }

    private HomeMerges.Merge found(UUID id) {
        return merges.all().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(NotFoundException::new);
    }

    private static MergeDocument document(HomeMerges.Merge merge) {
        return new MergeDocument(
                merge.id(),
                merge.homeId(),
                merge.home(),
                merge.otherId(),
                merge.other(),
                merge.at(),
                merge.undoableUntil());
    }
}
