package changeover.web.api;

import changeover.scheduling.dayplan.change.Rings;
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
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** The customers who must hear that their visit is not as it was; whoever was told an hour stands first. */
@Path("/api/v1/{slug}/rings")
@RolesAllowed({"owner", "office"})
public class RingsApi {

    @Inject
    Rings rings;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public List<Rings.Ring> open() {
        return rings.open();
    }

    /** They know. */
    @POST
    @Path("{ring}/call")
    public Response rung(@PathParam("ring") UUID ring, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "ring " + ring + body, () -> {
            if (!rings.rung(ring)) {
                throw new NotFoundException();
            }
            Asked.of(body, json).nothingElse().understood();
            return Once.Answer.done(Map.of("ring", ring, "left", rings.count()));
        });
    }
}
