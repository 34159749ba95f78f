package changeover.web.api;

import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.closeout.Amendments;
import changeover.scheduling.closeout.SentOperation;
import changeover.web.session.Once;
import changeover.web.session.OwnVisits;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;

/** A closed visit is corrected: what it said and says now are both kept, with a reason. */
@Path("/api/v1/{slug}/visits/{id}/amendments")
@RolesAllowed({"owner", "office"})
public class AmendmentsApi {

    /** @param version of the closure that the amendment made */
    public record AmendmentDocument(UUID id, UUID visit, int version) {}

    @Inject
    Amendments amendments;

    @Inject
    OwnVisits visits;

    @Inject
    CurrentTenant current;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** {@code why}, and {@code operations} as devices send them: all of them are taken, or none. */
    @POST
    public Response amend(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "amendments " + id + body, () -> {
            var _ = visits.found(id);
            Asked asked = Asked.of(body, json);
            String why = asked.text("why", 4000);
            List<SentOperation> corrections =
                    asked.each("operations").stream().map(SentJson::read).toList();
            asked.nothingElse().understood();
            UUID amendment = Once.named(operation);
            int version = amendments.amend(amendment, id, why, corrections, current.person());
            return Once.Answer.done(new AmendmentDocument(amendment, id, version));
        });
    }
}
