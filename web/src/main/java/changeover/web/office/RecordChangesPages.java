package changeover.web.office;

import changeover.billing.payments.Payments;
import changeover.contracts.customers.AllEquipment;
import changeover.contracts.customers.Equipment;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Tab;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.UUID;

/** For the owner: what was changed in a record and by whom, for every kind of record that somebody may change. */
@Path("/{slug}/changes")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("owner")
public class RecordChangesPages {

    /** The last page that anybody leafs to. */
    private static final int LAST_PAGE = 100_000;

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance recordchanges(Frame frame, ChangesView view, String list);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    ChangesViews views;

    @Inject
    AllEquipment machines;

    @Inject
    Payments payments;

    @GET
    @Path("customers/{customer}")
    @Transactional
    public TemplateInstance customer(@PathParam("customer") UUID id, @QueryParam("page") @DefaultValue("1") int page) {
        return one(Recorded.CUSTOMERS, id, "customers/" + id, Tab.HOMES, page);
    }

    @GET
    @Path("buildings/{building}")
    @Transactional
    public TemplateInstance building(@PathParam("building") UUID id, @QueryParam("page") @DefaultValue("1") int page) {
        return one(Recorded.BUILDINGS, id, "buildings/" + id, Tab.HOMES, page);
    }

    @GET
    @Path("machines/{machine}")
    @Transactional
    public TemplateInstance machine(@PathParam("machine") UUID id, @QueryParam("page") @DefaultValue("1") int page) {
        Equipment machine = machines.get(id).orElseThrow(NotFoundException::new);
        String place = machine.homeId()
                .map(home -> "homes/" + home)
                .orElseGet(() -> "buildings/" + machine.buildingId().orElseThrow());
        return one(Recorded.MACHINES, id, place + "/machines/" + id, Tab.HOMES, page);
    }

    @GET
    @Path("plans/{plan}")
    @Transactional
    public TemplateInstance plan(@PathParam("plan") UUID id, @QueryParam("page") @DefaultValue("1") int page) {
        return one(Recorded.PLANS, id, "plans/" + id, Tab.PLANS, page);
    }

    @GET
    @Path("agreements/{agreement}")
    @Transactional
    public TemplateInstance agreement(
            @PathParam("agreement") UUID id, @QueryParam("page") @DefaultValue("1") int page) {
        return one(Recorded.AGREEMENTS, id, "agreements/" + id, Tab.AGREEMENTS, page);
    }

    @GET
    @Path("visits/{visit}")
    @Transactional
    public TemplateInstance visit(@PathParam("visit") UUID id, @QueryParam("page") @DefaultValue("1") int page) {
        return one(Recorded.VISITS, id, "visits/" + id, Tab.SEASON, page);
    }

    @GET
    @Path("invoices/{invoice}")
    @Transactional
    public TemplateInstance invoice(@PathParam("invoice") UUID id, @QueryParam("page") @DefaultValue("1") int page) {
        return one(Recorded.INVOICES, id, "money/invoices/" + id, Tab.MONEY, page);
    }

    @GET
    @Path("payments/{payment}")
    @Transactional
    public TemplateInstance payment(@PathParam("payment") UUID id, @QueryParam("page") @DefaultValue("1") int page) {
        UUID customer = payments.of(id).orElseThrow(NotFoundException::new).customerId();
        return one(Recorded.PAYMENTS, id, "money/customers/" + customer, Tab.MONEY, page);
    }

    @GET
    @Path("parts/{part:.+}")
    @Transactional
    public TemplateInstance part(@PathParam("part") String code, @QueryParam("page") @DefaultValue("1") int page) {
        return one(Recorded.PARTS, code, "parts", Tab.PARTS, page);
    }

    @GET
    @Path("people/{person}")
    @Transactional
    public TemplateInstance person(@PathParam("person") UUID id, @QueryParam("page") @DefaultValue("1") int page) {
        return one(Recorded.PEOPLE, id, "shop/people/" + id, Tab.SHOP, page);
    }

    @GET
    @Path("prices")
    @Transactional
    public TemplateInstance prices(@QueryParam("page") @DefaultValue("1") int page) {
        return list(Recorded.PRICES, "prices", "shop/prices", page);
    }

    @GET
    @Path("fees")
    @Transactional
    public TemplateInstance fees(@QueryParam("page") @DefaultValue("1") int page) {
        return list(Recorded.FEES, "fees", "money/fees", page);
    }

    @GET
    @Path("costs")
    @Transactional
    public TemplateInstance costs(@QueryParam("page") @DefaultValue("1") int page) {
        return list(Recorded.COSTS, "costs", "shop/costs", page);
    }

    @GET
    @Path("taxes")
    @Transactional
    public TemplateInstance taxes(@QueryParam("page") @DefaultValue("1") int page) {
        return list(Recorded.TAXES, "taxes", "shop/taxes", page);
    }

    @GET
    @Path("business")
    @Transactional
    public TemplateInstance business(@QueryParam("page") @DefaultValue("1") int page) {
        return list(Recorded.BUSINESS, "business", "shop", page);
    }

    @GET
    @Path("seasons")
    @Transactional
    public TemplateInstance seasons(@QueryParam("page") @DefaultValue("1") int page) {
        return list(Recorded.SEASONS, "seasons", "shop/seasons", page);
    }

    @GET
    @Path("intervals")
    @Transactional
    public TemplateInstance intervals(@QueryParam("page") @DefaultValue("1") int page) {
        return list(Recorded.INTERVALS, "intervals", "shop/intervals", page);
    }

    @GET
    @Path("kinds")
    @Transactional
    public TemplateInstance kinds(@QueryParam("page") @DefaultValue("1") int page) {
        return list(Recorded.KINDS, "kinds", "shop/kinds", page);
    }

    private TemplateInstance one(Recorded kind, Object id, String back, Tab tab, int page) {
        Frame frame = frames.of(tab);
        return Pages.recordchanges(frame, views.record(kind, id, back, known(page), frame), "");
    }

    private TemplateInstance list(Recorded kind, String name, String back, int page) {
        Frame frame = frames.of(Tab.SHOP);
        return Pages.recordchanges(frame, views.list(kind, back, known(page), frame), name);
    }

    static int known(int page) {
        if (page < 1 || page > LAST_PAGE) {
            throw new NotFoundException();
        }
        return page;
    }
}
