package changeover.web.api;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.calls.OnCall;
import changeover.scheduling.calls.OnCalls;
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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Whose telephone rings outside hours: one person a day. */
@Path("/api/v1/{slug}/on-call")
@RolesAllowed({"owner", "office"})
public class OnCallApi {

    /** A turn; {@code last} is its last day, in. */
    public record Turn(UUID id, UUID person, LocalDate from, LocalDate last) {}

    @Inject
    OnCalls onCalls;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** @param until the last day; both days default to the coming two years */
    @GET
    @Transactional
    public List<Turn> turns(@Nullable @QueryParam("from") String from, @Nullable @QueryParam("until") String until) {
        LocalDate first = from == null ? today.day() : AskedInQuery.day("from", from);
        LocalDate last = until == null ? first.plusYears(2) : AskedInQuery.day("until", until);
        if (last.isBefore(first)) {
            throw Refusal.of("visits.days").at("until").thrown();
        }
        return onCalls.in(Window.ofDays(first, last)).stream()
                .map(OnCallApi::turn)
                .toList();
    }

    /** Names somebody: {@code person, from, last}. */
    @POST
    public Response give(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "on-call " + body, () -> {
            Asked asked = Asked.of(body, json);
            UUID person = asked.id("person");
            LocalDate first = asked.day("from");
            LocalDate last = asked.day("last");
            if (last.isBefore(first)) {
                asked.refuse(Refusal.of("visit.last-before-first").at("last"));
            }
            asked.nothingElse().understood();
            OnCall turn = onCalls.give(person, Window.ofDays(first, last));
            return Once.Answer.made("/api/v1/" + slug + "/on-call", turn(turn));
        });
    }

    /** Takes a turn away. */
    @POST
    @Path("{turn}/removal")
    public Response takeAway(@PathParam("turn") UUID turn, @HeaderParam("Operation-Id") String operation) {
        return once.answer(operation, "on-call removal " + turn, () -> {
            if (!onCalls.takeAway(turn)) {
                throw new NotFoundException();
            }
            return Once.Answer.done(turns(null, null));
        });
    }

    private static Turn turn(OnCall turn) {
        return new Turn(
                turn.id(), turn.personId(), turn.days().from(), turn.days().last());
    }
}
