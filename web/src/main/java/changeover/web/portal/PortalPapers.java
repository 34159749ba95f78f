package changeover.web.portal;

import changeover.billing.documents.Document;
import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.billing.invoices.DocumentKind;
import changeover.billing.invoices.InvoiceView;
import changeover.billing.invoices.Invoices;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.scheduling.closeout.Closure;
import changeover.scheduling.closeout.Closures;
import changeover.scheduling.reviews.Reviews;
import changeover.web.session.CustomerLinks;
import changeover.web.session.PaperAnswer;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.CookieParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A customer's papers: the invoices that ask them to pay, and the reports of visits to a home while it is theirs. */
@Path("/{slug}/yours")
@Produces("application/pdf")
@RolesAllowed("customer")
public class PortalPapers {

    @Inject
    CustomerLinks links;

    @Inject
    Invoices invoices;

    @Inject
    Closures closures;

    @Inject
    Reviews reviews;

    @Inject
    TheirHomes homes;

    @Inject
    DocumentsToMake papers;

    @Inject
    CurrentTenant current;

    @Inject
    Today today;

    @GET
    @Path("invoices/{id}")
    public Response invoice(@PathParam("id") UUID id, @CookieParam(PortalPages.COOKIE) @Nullable String secret) {
        PaperKind kind = current.run(current.id(), current.person(), () -> {
            UUID customer = customer(secret);
            InvoiceView view = invoices.view(id)
                    .filter(one -> one.customerId().equals(customer))
                    .orElseThrow(NotFoundException::new);
            return view.kind() == DocumentKind.CREDIT ? PaperKind.CREDIT : PaperKind.INVOICE;
        });
        return paper(kind, id);
    }

    @GET
    @Path("reports/{visit}")
    public Response report(@PathParam("visit") UUID visit, @CookieParam(PortalPages.COOKIE) @Nullable String secret) {
        boolean theirs = current.run(current.id(), current.person(), () -> {
            UUID customer = customer(secret);
            Closure closure = closures.of(visit).orElseThrow(NotFoundException::new);
            return !reviews.isHeld(visit)
                    && homes.since(closure.homeId(), customer, today.day())
                            .filter(since -> !closure.day().isBefore(since))
                            .isPresent();
        });
        if (!theirs) {
            throw new NotFoundException();
        }
        return paper(PaperKind.REPORT, visit);
    }

    private UUID customer(@Nullable String secret) {
        return Optional.ofNullable(secret).flatMap(links::find).orElseThrow(NotFoundException::new);
    }

    private Response paper(PaperKind kind, UUID id) {
        Document paper = papers.newest(current.id(), kind, id).orElseThrow(NotFoundException::new);
        return PaperAnswer.of(paper);
    }
}
