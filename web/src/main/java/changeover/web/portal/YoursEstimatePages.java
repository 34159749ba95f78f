package changeover.web.portal;

import changeover.billing.documents.Documents;
import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.billing.documents.Wanted;
import changeover.billing.estimates.Answering;
import changeover.billing.estimates.AskingForMore;
import changeover.billing.estimates.ConsentChannel;
import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.EstimateState;
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
import changeover.web.session.Written;
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
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A customer reads an estimate on their own page and says yes or no to it themselves. */
@Path("/{slug}/yours/estimates/{estimate}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("customer")
public class YoursEstimatePages {

    /** @param waits whether it may still be answered */
    public record Sheet(
            UUID id,
            String label,
            String home,
            String words,
            String until,
            String deposit,
            List<Line> lines,
            List<Line> taxes,
            String total,
            boolean waits,
            String stands,
            @Nullable More more) {}

    /** A question for a yes to more; amounts before taxes. */
    public record More(UUID id, String whole, String accepted, String words) {}

    public record Line(String quantity, String words, String why, String amount) {}

    @CheckedTemplate(basePath = "portal")
    static class Pages {
        static native TemplateInstance yoursestimate(Frame frame, Sheet sheet, Said form);

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
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = theirs(id, secret);
                    boolean yes =
                            typed.oneOf("how", Set.of("accepted", "refused")).equals("accepted");
                    String name = typed.text("byName", 200);
                    String words = typed.line("words", 1000);
                    typed.understood();
                    var _ = answering.answer(id, new NewAnswer(yes, name, today.now(), ConsentChannel.LINK, words));
                    return "/" + slug + "/yours/estimates/" + id;
                },
                refusals -> {
                    Locale locale = locale(secret);
                    return page(theirs(id, secret), secret, Said.again(typed, refusals, locale));
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
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = theirs(id, secret);
                    boolean yes =
                            typed.oneOf("how", Set.of("accepted", "refused")).equals("accepted");
                    String name = typed.text("byName", 200);
                    String words = typed.line("words", 1000);
                    typed.understood();
                    asking.answer(id, asked, yes, name, words);
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
        return Pages.yoursestimate(frame, sheet(one, frame), form).setLocale(locale);
    }

    private Sheet sheet(Estimate one, Frame frame) {
        Locale locale = frame.locale();
        var sum = estimates.sum(one);
        var state = one.state(frame.today());
        return new Sheet(
                one.id(),
                one.label().orElseThrow(),
                one.home(),
                one.words(),
                frame.inWords(one.validUntil()),
                one.deposit() == null ? "" : one.deposit().format(locale),
                sum.lines().stream()
                        .map(line -> new Line(
                                Written.of(line.quantity(), locale),
                                line.words().in(locale),
                                line.why().in(locale),
                                line.net().format(locale)))
                        .toList(),
                sum.taxes().stream()
                        .map(tax -> new Line(
                                "", tax.label().in(locale), "", tax.amount().format(locale)))
                        .toList(),
                sum.total().format(locale),
                state == EstimateState.OFFERED,
                state.wording().in(locale),
                asking.open(one)
                        .map(asked -> new More(
                                asked.id(),
                                asked.whole().format(locale),
                                Objects.requireNonNull(one.accepted()).format(locale),
                                asked.words()))
                        .orElse(null));
    }
}
