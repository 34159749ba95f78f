package changeover.web.office;

import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.FoundHome;
import changeover.contracts.customers.Home;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
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
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The list of homes, the search over it, and a new home in one form. */
@Path("/{slug}/homes")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class HomePages {

    /** How many homes stand on one page of the list. */
    static final int PAGE = 50;

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance homes(
                Frame frame, String asked, List<FoundHome> homes, long count, int from, boolean more);

        static native TemplateInstance newhome(Frame frame, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Homes homes;

    @Inject
    Customers customers;

    @Inject
    HomeParts parts;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance list(
            @QueryParam("q") @DefaultValue("") String asked, @QueryParam("from") @DefaultValue("0") int from) {
        String text = asked.length() > 100 ? asked.substring(0, 100) : asked.strip();
        int start = Math.clamp(from, 0, 1_000_000);
        List<FoundHome> found = homes.find(text, start, PAGE + 1);
        long count = text.isEmpty() ? homes.count() : start + found.size();
        return Pages.homes(
                frames.of(Tab.HOMES), text, found.stream().limit(PAGE).toList(), count, start, found.size() > PAGE);
    }

    @GET
    @Path("new")
    @Transactional
    public TemplateInstance write() {
        Business business = businesses.current();
        return Pages.newhome(
                frames.of(Tab.HOMES),
                Said.filled(Map.of(
                        "language", business.language(),
                        "region", business.region(),
                        "country", business.country(),
                        "propertyUse", "residential")));
    }

    /** One form, one deed: the customer, the home, and everything that the customer is to it. */
    @POST
    public Response add(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Customer.Facts customer = customer(typed);
                    Home.Facts home = home(typed);
                    typed.understood();
                    Home kept = homes.add(home);
                    parts.beginAll(kept.id(), customers.add(customer).id(), today.day());
                    return SaidOnce.at("/" + slug + "/homes/" + kept.id(), "home-kept");
                },
                refusals -> Pages.newhome(frames.of(Tab.HOMES), Said.again(typed, refusals, frames.locale())));
    }

    private static Customer.Facts customer(Typed typed) {
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
                "each",
                null,
                null,
                null,
                null);
    }

    static Home.Facts home(Typed typed) {
        return new Home.Facts(
                typed.idOrNone("building"),
                typed.line("unitLabel", 60),
                typed.text("street", 200),
                typed.text("city", 100),
                typed.text("region", 10),
                typed.line("postal", 20),
                typed.text("country", 2),
                typed.numberOrNone("latitude", -90, 90),
                typed.numberOrNone("longitude", -180, 180),
                typed.oneOf("propertyUse", Set.of("residential", "commercial")),
                null,
                typed.line("gettingIn", 4000),
                typed.ticked("toBeRead"));
    }
}
