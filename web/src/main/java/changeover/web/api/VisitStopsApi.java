package changeover.web.api;

import changeover.scheduling.stopped.StopLists;
import changeover.web.session.Once;
import changeover.web.session.OwnVisits;
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
import java.util.List;
import java.util.UUID;

/** What must not be used in the home of a visit, for whoever's visit it is. */
@Path("/api/v1/{slug}/visits/{id}/stopped")
@RolesAllowed({"owner", "office", "technician"})
public class VisitStopsApi {

    @Inject
    StopLists lists;

    @Inject
    StopAnswers answers;

    @Inject
    OwnVisits visits;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** What must not be used there today. */
    @GET
    @Transactional
    public List<StopDocument> list(@PathParam("id") UUID id) {
        UUID home = visits.found(id).homeId();
        return lists.openIn(List.of(home)).getOrDefault(home, List.of()).stream()
                .map(StopDocument::of)
                .toList();
    }

    /** A machine of the home is stopped, with or without a ticket: {@code seen}, optionally {@code equipment, language, shutOff, ticket}. */
    @POST
    public Response stop(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "visit stopped " + id + body, () -> {
            UUID home = visits.found(id).homeId();
            StopDocument made = answers.stop(operation, home, id, Asked.of(body, json));
            return Once.Answer.made("/api/v1/" + slug + "/visits/" + id + "/stopped", made);
        });
    }

    /** A duty was done: {@code code, who}, optionally {@code day, words}. */
    @POST
    @Path("{stop}/duties")
    public Response duty(
            @PathParam("id") UUID id,
            @PathParam("stop") UUID stop,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "visit stopped duty " + id + stop + body, () -> {
            refuseStrangers(id, stop);
            return Once.Answer.done(answers.duty(stop, Asked.of(body, json)));
        });
    }

    /** {@code onlyHeat, freezing}, and where both are true what heats the home {@code tonight} and who was called when. */
    @POST
    @Path("{stop}/heat")
    public Response heat(
            @PathParam("id") UUID id,
            @PathParam("stop") UUID stop,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "visit stopped heat " + id + stop + body, () -> {
            refuseStrangers(id, stop);
            return Once.Answer.done(answers.heat(stop, Asked.of(body, json)));
        });
    }

    /** {@code how} (in_service, taken_out) and {@code done}: refused without the ticket. */
    @POST
    @Path("{stop}/service")
    public Response end(
            @PathParam("id") UUID id,
            @PathParam("stop") UUID stop,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "visit stopped service " + id + stop + body, () -> {
            refuseStrangers(id, stop);
            return Once.Answer.done(answers.end(stop, Asked.of(body, json)));
        });
    }

    /** A stop of another home is not found, unless it is one of the building's. */
    private void refuseStrangers(UUID visit, UUID stop) {
        var _ = lists.in(visits.found(visit).homeId(), stop).orElseThrow(NotFoundException::new);
    }
}
