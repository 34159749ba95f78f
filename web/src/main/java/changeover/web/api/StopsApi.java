package changeover.web.api;

import changeover.contracts.customers.Homes;
import changeover.contracts.words.Refusal;
import changeover.scheduling.stopped.MachineStop;
import changeover.scheduling.stopped.StopLists;
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
import java.util.List;
import java.util.UUID;

/** Machines that must not be used: everything of the business, stopped by the office, put back by whoever holds the ticket. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office"})
public class StopsApi {

    private static final int PAGE = 100;

    @Inject
    StopLists lists;

    @Inject
    StopAnswers answers;

    @Inject
    Homes homes;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** @param state open (what must not be used today) or over, the newest first from {@code from} on, a hundred at a time */
    @GET
    @Path("stopped")
    @Transactional
    public List<StopDocument> list(
            @QueryParam("state") @DefaultValue("open") String state, @QueryParam("from") @DefaultValue("0") int from) {
        List<MachineStop> found = switch (state) {
            case "open" -> lists.open();
            case "over" -> lists.over(Math.clamp(from, 0, 1_000_000), PAGE);
            default ->
                throw Refusal.of("typed.one-of", java.util.Map.of("words", "open, over"))
                        .at("state")
                        .thrown();
        };
        return found.stream().map(StopDocument::of).toList();
    }

    @GET
    @Path("stopped/{stop}")
    @Transactional
    public StopDocument one(@PathParam("stop") UUID id) {
        return StopDocument.of(found(id));
    }

    /** A machine of the home is stopped: {@code seen}, optionally {@code equipment, language, shutOff, ticket}. */
    @POST
    @Path("homes/{home}/stopped")
    public Response stop(
            @PathParam("slug") String slug,
            @PathParam("home") UUID home,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "stopped " + home + body, () -> {
            var _ = homes.get(home).orElseThrow(NotFoundException::new);
            StopDocument made = answers.stop(operation, home, null, Asked.of(body, json));
            return Once.Answer.made("/api/v1/" + slug + "/stopped/" + made.id(), made);
        });
    }

    /** A duty was done: {@code code, who}, optionally {@code day, words}. */
    @POST
    @Path("stopped/{stop}/duties")
    public Response duty(@PathParam("stop") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "stopped duty " + id + body, () -> {
            var _ = found(id);
            return Once.Answer.done(answers.duty(id, Asked.of(body, json)));
        });
    }

    /** {@code onlyHeat, freezing}, and where both are true what heats the home {@code tonight} and who was called when. */
    @POST
    @Path("stopped/{stop}/heat")
    public Response heat(@PathParam("stop") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "stopped heat " + id + body, () -> {
            var _ = found(id);
            return Once.Answer.done(answers.heat(id, Asked.of(body, json)));
        });
    }

    /** {@code how} (in_service, taken_out) and {@code done}: refused without the ticket. */
    @POST
    @Path("stopped/{stop}/service")
    public Response end(@PathParam("stop") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "stopped service " + id + body, () -> {
            var _ = found(id);
            return Once.Answer.done(answers.end(id, Asked.of(body, json)));
        });
    }

    /** A licensed partner put it back: {@code how} (in_service, taken_out), {@code done, partner}, optionally {@code day} (today). */
    @POST
    @Path("stopped/{stop}/partner")
    public Response endByPartner(
            @PathParam("stop") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "stopped partner " + id + body, () -> {
            var _ = found(id);
            return Once.Answer.done(answers.endByPartner(id, Asked.of(body, json)));
        });
    }

    /** Something else has to be done: {@code words, source, due}, optionally {@code whose} (office, whoever-stops). */
    @POST
    @Path("stopped/{stop}/additions")
    public Response add(@PathParam("stop") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "stopped addition " + id + body, () -> {
            var _ = found(id);
            return Once.Answer.done(answers.add(operation, id, Asked.of(body, json)));
        });
    }

    /** Another ticket may put it back: {@code ticket, why}. */
    @POST
    @Path("stopped/{stop}/ticket")
    public Response ticket(@PathParam("stop") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "stopped ticket " + id + body, () -> {
            var _ = found(id);
            return Once.Answer.done(answers.ticket(id, Asked.of(body, json)));
        });
    }

    private MachineStop found(UUID id) {
        return lists.find(id).orElseThrow(NotFoundException::new);
    }
}
