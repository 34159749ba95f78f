package changeover.web.portal;

import changeover.billing.documents.Documents;
import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.billing.documents.Wanted;
import changeover.billing.estimates.Answering;
import changeover.billing.estimates.AskingForMore;
import changeover.billing.estimates.ConsentChannel;
import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.Estimates;
import changeover.billing.estimates.NewAnswer;
import changeover.contracts.customers.Customers;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Locales;
import changeover.contracts.tenants.Today;
import changeover.web.session.CustomerLinks;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.PaperAnswer;
import changeover.web.session.Said;
import changeover.web.session.Typed;
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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** A customer reads an estimate on their own page and says yes or no to it themselves. */
@Path("/{slug}/yours/estimates/{estimate}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("customer")
public class YoursEstimatePages {

    @CheckedTemplate(basePath = "portal")
    static class Pages {
        static native TemplateInstance yoursestimate(Frame frame, YoursEstimate.Sheet sheet, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    CustomerLinks links;

    @Inject
    Customers customers;

    @Inject
    Estimates estimates;

    @Inject
    YoursEstimate inWords;

    @Inject
    Answering answering;

    @Inject
    AskingForMore asking;

    @Inject
    Documents documents;

    @Inject
    DocumentsToMake papers;

    @Inject
    CurrentTenant current;

    @Inject
    Today today;

    @GET
    @Transactional
    public Response one(@PathParam("estimate") UUID id, @CookieParam(PortalPages.COOKIE) @Nullable String secret) {
        Estimate one = theirs(id, secret);
        return Response.ok(page(one, secret, Said.blank()).render(), "text/html;charset=UTF-8")
                .header("Cache-Control", "no-store")
                .build();
    }

    @POST
    @Path("answer")
    public Response answer(
            @PathParam("slug") String slug,
            @PathParam("estimate") UUID id,
            @CookieParam(PortalPages.COOKIE) @Nullable String secret,
            MultivaluedMap<String, String> fields) {
        return said(slug, id, secret, fields, said -> {
            var _ = answering.answer(
                    id, new NewAnswer(said.yes(), said.name(), today.now(), ConsentChannel.LINK, said.words()));
        });
    }

    /** Yes or no to more than was accepted; what was asked meanwhile is theirs to read first. */
    @POST
    @Path("questions/{question}")
    public Response more(
            @PathParam("slug") String slug,
            @PathParam("estimate") UUID id,
            @PathParam("question") UUID asked,
            @CookieParam(PortalPages.COOKIE) @Nullable String secret,
            MultivaluedMap<String, String> fields) {
        return said(slug, id, secret, fields, said -> asking.answer(id, asked, said.yes(), said.name(), said.words()));
    }

    /** A yes or a no as the customer typed it. */
    private record Typing(
            boolean yes, String name, @Nullable String words) {}

    private Response said(
            String slug,
            UUID id,
            @Nullable String secret,
            MultivaluedMap<String, String> fields,
            Consumer<Typing> verb) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = theirs(id, secret);
                    boolean yes =
                            typed.oneOf("how", Set.of("accepted", "refused")).equals("accepted");
                    var said = new Typing(yes, typed.text("byName", 200), typed.line("words", 1000));
                    typed.understood();
                    verb.accept(said);
                    return "/" + slug + "/yours/estimates/" + id;
                },
                refusals -> {
                    Locale locale = locale(secret);
                    return page(theirs(id, secret), secret, Said.again(typed, refusals, locale));
                });
    }

    @GET
    @Path("pdf")
    @Produces("application/pdf")
    public Response pdf(@PathParam("estimate") UUID id, @CookieParam(PortalPages.COOKIE) @Nullable String secret) {
        current.run(current.id(), current.person(), () -> {
            Estimate one = theirs(id, secret);
            documents.order(List.of(Wanted.of(PaperKind.ESTIMATE, one.id())));
            return one;
        });
        return PaperAnswer.of(
                papers.newest(current.id(), PaperKind.ESTIMATE, id).orElseThrow(NotFoundException::new));
    }

    /** Only what was offered to this customer; a draft is nobody's to read. */
    private Estimate theirs(UUID id, @Nullable String secret) {
        UUID customer = customer(secret);
        return estimates
                .find(id)
                .filter(one -> one.offer() != null && one.customerId().equals(customer))
                .orElseThrow(NotFoundException::new);
    }

    private UUID customer(@Nullable String secret) {
        return Optional.ofNullable(secret).flatMap(links::find).orElseThrow(NotFoundException::new);
    }

    private Locale locale(@Nullable String secret) {
        return Locales.of(customers.get(customer(secret)).orElseThrow().language());
    }

    private TemplateInstance page(Estimate one, @Nullable String secret, Said form) {
        Locale locale = locale(secret);
        Frame frame = frames.forCustomer(locale);
        return Pages.yoursestimate(frame, inWords.of(one, frame), form).setLocale(locale);
    }
}
