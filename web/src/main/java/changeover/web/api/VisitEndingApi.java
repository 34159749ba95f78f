package changeover.web.api;

import changeover.contracts.tenants.Today;
import changeover.scheduling.visits.Visits;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.Set;
import java.util.UUID;

/** A visit that will not be, or was not: cancelled, nobody let us in, or we did not come. What was made is closed out. */
@Path("/api/v1/{slug}/visits/{id}/ending")
@RolesAllowed({"owner", "office"})
public class VisitEndingApi {

    @Inject
    Visits visits;

    @Inject
    HourDocuments documents;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** {@code how} (cancelled, no_access or not_kept) and {@code why}. */
    @POST
    public Response end(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "visit ending " + id + body, () -> {
            if (visits.find(id).isEmpty()) {
                throw new NotFoundException();
            }
            Asked asked = Asked.of(body, json);
            String how = asked.oneOf("how", Set.of("cancelled", "no_access", "not_kept"));
            String why = asked.text("why", 500);
            asked.nothingElse().understood();
            LocalDate day = today.day();
            switch (how) {
                case "cancelled" -> visits.cancel(id, day, why);
                case "no_access" -> visits.noAccess(id, day, why);
                default -> visits.notKept(id, day, why);
            }
            return Once.Answer.done(documents.of(id));
        });
    }
}
