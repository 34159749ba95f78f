package changeover.web.office;

import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.web.session.CustomerLink;
import changeover.web.session.CustomerLinks;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.UUID;

/** The office makes a customer's own link, sees it once, and takes every link back when it went astray. */
@Path("/{slug}/customers/{customer}/link")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class CustomerLinkPages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance customerlink(
                Frame frame, Customer customer, List<CustomerLink> links, String made);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Customers customers;

    @Inject
    CustomerLinks links;

    @GET
    @Transactional
    public TemplateInstance links(@PathParam("customer") UUID id) {
        return page(known(id), "");
    }

    /** The whole address, in the answer to the post itself and nowhere else again. */
    @POST
    public Response make(@PathParam("slug") String slug, @PathParam("customer") UUID id, @Context UriInfo address) {
        return desk.show(
                () -> {
                    Customer customer = known(id);
                    return page(customer, address.getBaseUri() + slug + "/yours/" + links.make(id));
                },
                refusals -> page(known(id), ""));
    }

    @POST
    @Path("revocation")
    public Response revoke(@PathParam("slug") String slug, @PathParam("customer") UUID id) {
        return desk.answer(
                () -> {
                    known(id);
                    links.revoke(id);
                    return SaidOnce.at("/" + slug + "/customers/" + id + "/link", "kept");
                },
                refusals -> page(known(id), ""));
    }

    private TemplateInstance page(Customer customer, String made) {
        return Pages.customerlink(frames.of(Tab.HOMES), customer, links.open(customer.id()), made);
    }

    private Customer known(UUID id) {
        return customers.get(id).orElseThrow(NotFoundException::new);
    }
}
