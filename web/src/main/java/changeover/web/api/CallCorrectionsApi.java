package changeover.web.api;

import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.scheduling.calls.Call;
import changeover.scheduling.calls.CallVersion;
import changeover.scheduling.calls.CallVersions;
import changeover.scheduling.calls.Calls;
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
import org.jspecify.annotations.Nullable;

/** The versions of a call, first to last: what was written down, and what was put right by whom, when and why. */
@Path("/api/v1/{slug}/calls/{call}/corrections")
@RolesAllowed({"owner", "office"})
public class CallCorrectionsApi {

    /**
     * A version.
     *
     * @param why null for what was written down first
     */
    public record Version(
            CallDocument call,
            @Nullable String by,
            Instant at,
            @Nullable String why) {}

    @Inject
    Calls calls;

    @Inject
    CallVersions versions;

    @Inject
    Businesses businesses;

    @Inject
    CurrentTenant current;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public List<Version> all(@PathParam("call") UUID id) {
        Call call = found(id);
        return versions.all(call).stream().map(one -> version(call, one)).toList();
    }

    /**
     * The call as it should have been written down, whole, as it is taken ({@code caller, trouble, words} and what is optional
     * there, without a home and {@code rangAt}, which stay), and {@code why}.
     */
    @POST
    public Response correct(@PathParam("call") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "call correction " + id + body, () -> {
            Call call = found(id);
            Asked asked = Asked.of(body, json);
            var read = new CallJson(asked, today.now(), businesses.current().currency());
            Call.Facts facts = read.facts(call.homeId(), call.facts().rangAt());
            String why = asked.text("why", 500);
            asked.nothingElse();
            read.judge(facts);
            asked.understood();
            calls.correct(id, facts, why, current.person(), today.now());
            return Once.Answer.done(version(call, versions.all(call).getLast()));
        });
    }

    private Call found(UUID id) {
        return calls.find(id).orElseThrow(NotFoundException::new);
    }

    private Version version(Call call, CallVersion one) {
        return new Version(
                CallDocument.of(call, one.facts(), calls.outcome(call.id()).orElse(null)),
                one.by(),
                one.at(),
                one.why());
    }
}
