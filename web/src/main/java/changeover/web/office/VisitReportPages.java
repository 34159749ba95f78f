package changeover.web.office;

import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.contracts.tenants.CurrentTenant;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.PaperAnswer;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.util.UUID;

/** The service report of a closed visit, in its newest version. */
@Path("/{slug}/visits/{id}/report")
@RolesAllowed({"owner", "office"})
public class VisitReportPages {

    @Inject
    VisitLists visits;

    @Inject
    DocumentsToMake papers;

    @Inject
    CurrentTenant current;

    @GET
    @Produces("application/pdf")
    public Response report(@PathParam("id") UUID id) {
        current.run(current.id(), current.person(), () -> visits.one(id).orElseThrow(NotFoundException::new));
        return papers.newest(current.id(), PaperKind.REPORT, id)
                .map(PaperAnswer::of)
                .orElseThrow(NotFoundException::new);
    }
}
