package changeover.web.portal;

import changeover.billing.estimates.AskingForMore;
import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.EstimateState;
import changeover.billing.estimates.Estimates;
import changeover.billing.payments.InvoiceFilter;
import changeover.billing.payments.InvoiceLists;
import changeover.billing.payments.InvoiceRow;
import changeover.billing.payments.Owed;
import changeover.billing.payments.OwedBy;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Home;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Locales;
import changeover.web.session.CustomerLinks;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.CookieParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The customer's own page. The link itself shows only a button, since mail programs open links before people do; the
 * button exchanges the secret for a cookie, so that it stands in no address afterwards.
 */
@Path("/{slug}/yours")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("customer")
public class PortalPages {

    static final String COOKIE = "yours";
    private static final int THIRTY_DAYS = 30 * 24 * 60 * 60;
    private static final int HOMES_AT_ONCE = 4;

    /**
     * An estimate that was offered to the customer.
     *
     * @param until its last day while it waits, else empty
     * @param asks whether it asks for a yes to more
     */
    public record Estimated(
            UUID id, String label, String words, String until, boolean asks, String stands, String total) {}

    @CheckedTemplate(basePath = "portal")
    static class Pages {
        static native TemplateInstance open(Frame frame, String phone, String dial, String name);

        static native TemplateInstance yours(
                Frame frame,
                String phone,
                String dial,
                String name,
                List<Home> others,
                List<Dwelling> dwellings,
                List<InvoiceRow> invoices,
                OwedBy owed,
                List<Estimated> estimates);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Businesses businesses;

    @Inject
    CustomerLinks links;

    @Inject
    Customers customers;

    @Inject
    TheirHomes homes;

    @Inject
    Dwellings dwellings;

    @Inject
    OwnCatalogue catalogue;

    @Inject
    InvoiceLists invoices;

    @Inject
    Owed owed;

    @Inject
    Estimates estimates;

    @Inject
    AskingForMore asking;

    @Inject
    CurrentTenant current;

    @GET
    @Path("{secret}")
    @Transactional
    public Response door(@PathParam("secret") String secret) {
        Customer customer = customer(secret);
        Locale locale = Locales.of(customer.language());
        String phone = phone();
        return page(Pages.open(frames.forCustomer(locale), phone, dial(phone), customer.name()), locale);
    }

    @POST
    @Path("{secret}")
    public Response exchange(
            @PathParam("slug") String slug, @PathParam("secret") String secret, @Context UriInfo address) {
        current.run(current.id(), current.person(), () -> customer(secret));
        String path = "/" + slug + "/yours";
        NewCookie cookie = new NewCookie.Builder(COOKIE)
                .value(secret)
                .path(path)
                .httpOnly(true)
                .sameSite(NewCookie.SameSite.LAX)
                .secure("https".equals(address.getBaseUri().getScheme()))
                .maxAge(THIRTY_DAYS)
                .build();
        return Response.seeOther(URI.create(path))
                .cookie(cookie)
                .header("Cache-Control", "no-store")
                .build();
    }

    /** Everything of their homes; with many homes the first few, and each other one by its link. */
    @GET
    @Transactional
    public Response yours(@CookieParam(COOKIE) @Nullable String secret, @QueryParam("home") @Nullable UUID home) {
        Customer customer = customer(secret);
        Locale locale = Locales.of(customer.language());
        Frame frame = frames.forCustomer(locale);
        List<Home> all = homes.of(customer.id(), frame.today());
        List<Home> shown = home == null
                ? all.stream().limit(HOMES_AT_ONCE).toList()
                : all.stream().filter(one -> one.id().equals(home)).toList();
        if (home != null && shown.isEmpty()) {
            throw new NotFoundException();
        }
        List<Home> others = all.stream().filter(one -> !shown.contains(one)).toList();
        OwnCatalogue.Own trade = catalogue.read();
        List<Dwelling> seen = shown.stream()
                .map(one -> dwellings.of(
                        one,
                        homes.since(one.id(), customer.id(), frame.today()).orElse(frame.today()),
                        frame.today(),
                        trade,
                        locale))
                .toList();
        List<InvoiceRow> asked = invoices.rows(InvoiceFilter.ofCustomer(customer.id()), frame.today()).stream()
                .filter(row -> row.label() != null)
                .toList();
        String phone = phone();
        return page(
                Pages.yours(
                        frame,
                        phone,
                        dial(phone),
                        customer.name(),
                        others,
                        seen,
                        asked,
                        owed.of(customer.id(), frame.today()),
                        estimated(customer.id(), frame)),
                locale);
    }

    private List<Estimated> estimated(UUID customer, Frame frame) {
        List<Estimate> offered = estimates.ofCustomer(customer).stream()
                .filter(one -> one.offer() != null)
                .toList();
        Set<UUID> asks = asking.open(offered).keySet();
        return offered.stream()
                .map(one -> estimated(one, asks.contains(one.id()), frame))
                .toList();
    }

    private static Estimated estimated(Estimate one, boolean asks, Frame frame) {
        EstimateState state = one.state(frame.today());
        return new Estimated(
                one.id(),
                one.label().orElseThrow(),
                one.words().lines().findFirst().orElse(""),
                state == EstimateState.OFFERED ? frame.inWords(one.validUntil()) : "",
                asks,
                state.wording().in(frame.locale()),
                Objects.requireNonNull(one.offer()).total().format(frame.locale()));
    }

    private Customer customer(@Nullable String secret) {
        return (secret == null ? java.util.Optional.<UUID>empty() : links.find(secret))
                .flatMap(customers::get)
                .orElseThrow(NotFoundException::new);
    }

    private String phone() {
        String phone = businesses.profile().facts().phone();
        return phone == null ? "" : phone;
    }

    private static String dial(String phone) {
        return phone.replaceAll("[^0-9+]", "");
    }

    private static Response page(TemplateInstance page, Locale locale) {
        return Response.ok(page.setLocale(locale).render(), "text/html;charset=UTF-8")
                .header("Cache-Control", "no-store")
                .build();
    }
}
