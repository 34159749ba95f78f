package changeover.web.office;

import changeover.billing.payments.InvoiceFilter;
import changeover.billing.payments.InvoiceLists;
import changeover.billing.payments.InvoiceRow;
import changeover.billing.payments.Owed;
import changeover.billing.payments.OwedBy;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.FilledOn;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One customer: what is known, the homes they have a part in, and what they owe. */
@Path("/{slug}/customers/{customer}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class CustomerPages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance customer(
                Frame frame,
                Customer customer,
                Customer.Facts facts,
                String dial,
                List<Home> homes,
                OwedBy owed,
                List<InvoiceRow> invoices,
                List<EstimateRowsInWords.Line> estimates);

        static native TemplateInstance customeredit(Frame frame, Customer customer, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Customers customers;

    @Inject
    HomeParts parts;

    @Inject
    Homes homes;

    @Inject
    Owed owed;

    @Inject
    InvoiceLists invoices;

    @Inject
    EstimateRowsInWords estimates;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance customer(@PathParam("customer") UUID id) {
        Customer customer = known(id);
        List<UUID> of = parts.homesOf(id, today.day());
        Frame frame = frames.of(Tab.HOMES);
        return Pages.customer(
                frame,
                customer,
                customer.facts(),
                customer.phone().map(PeopleOfHomes::dial).orElse(""),
                of.isEmpty() ? List.of() : homes.all(of),
                owed.of(id, today.day()),
                invoices.rows(InvoiceFilter.ofCustomer(id), today.day()),
                estimates.ofCustomer(frame, id));
    }

    @GET
    @Path("edit")
    @Transactional
    public TemplateInstance write(@PathParam("customer") UUID id) {
        Customer customer = known(id);
        return Pages.customeredit(frames.of(Tab.HOMES), customer, Said.filled(filled(customer.facts())));
    }

    @POST
    public Response keep(
            @PathParam("slug") String slug, @PathParam("customer") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        int version = typed.whole("version", 0, Integer.MAX_VALUE);
        return desk.answer(
                () -> {
                    known(id);
                    Customer.Facts facts = facts(typed);
                    typed.understood();
                    customers.rewrite(id, facts, new FilledOn(version));
                    return SaidOnce.at("/" + slug + "/customers/" + id, "kept");
                },
                refusals -> Pages.customeredit(
                        frames.of(Tab.HOMES), known(id), Said.again(typed, refusals, frames.locale())));
    }

    private Customer known(UUID id) {
        return customers.get(id).orElseThrow(NotFoundException::new);
    }

    private static Customer.Facts facts(Typed typed) {
        return new Customer.Facts(
                typed.text("name", 200),
                typed.oneOf("language", Set.of("en", "fr")),
                typed.line("phone", 40),
                typed.line("email", 200),
                typed.line("street", 200),
                typed.line("city", 100),
                typed.line("region", 10),
                typed.line("postal", 20),
                typed.line("country", 2),
                typed.oneOf("invoices", Set.of("one", "each")),
                typed.line("purchaseOrder", 60),
                typed.line("buyerReference", 60),
                typed.line("taxNumber", 40),
                typed.line("notes", 4000));
    }

    private static Map<String, String> filled(Customer.Facts facts) {
        var fields = new HashMap<String, String>();
        fields.put("name", facts.name());
        fields.put("language", facts.language());
        fields.put("phone", orEmpty(facts.phone()));
        fields.put("email", orEmpty(facts.email()));
        fields.put("street", orEmpty(facts.street()));
        fields.put("city", orEmpty(facts.city()));
        fields.put("region", orEmpty(facts.region()));
        fields.put("postal", orEmpty(facts.postal()));
        fields.put("country", orEmpty(facts.country()));
        fields.put("invoices", facts.invoices());
        fields.put("purchaseOrder", orEmpty(facts.purchaseOrder()));
        fields.put("buyerReference", orEmpty(facts.buyerReference()));
        fields.put("taxNumber", orEmpty(facts.taxNumber()));
        fields.put("notes", orEmpty(facts.notes()));
        return fields;
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }
}
