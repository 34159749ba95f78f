package changeover.web.office;

import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.billing.ledger.TrustMoney;
import changeover.billing.notices.OfferMail;
import changeover.billing.payments.InvoiceLists;
import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.agreements.AgreementsInWords;
import changeover.contracts.agreements.PlanChanges;
import changeover.contracts.agreements.Renewals;
import changeover.contracts.agreements.SaleChannel;
import changeover.contracts.agreements.TakenOverAgreements;
import changeover.contracts.agreements.Yes;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.PaperAnswer;
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
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One agreement: offered, accepted, in force, ended, renewed. */
@Path("/{slug}/agreements/{id}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class AgreementPage {

    /** An agreement in words. */
    public record View(
            UUID id,
            int number,
            UUID homeId,
            String home,
            String signer,
            String payer,
            UUID payerId,
            String plan,
            String term,
            String price,
            int instalments,
            int visits,
            String standsUntil,
            boolean open,
            boolean endable,
            String accepted,
            String acceptedBy,
            String acceptedHow,
            String ended,
            String endedWhy,
            List<Machine> machines,
            List<String> parts,
            List<Document> documents,
            @Nullable Other insteadOf,
            @Nullable Other change,
            @Nullable Before before) {}

    /** What was known of it when it was taken over; a text that nobody knows is empty. */
    public record Before(String day, String paid, String visits, String lastVisit) {}

    /** An agreement whose place another takes in mid-term. */
    public record Other(UUID id, int number, String plan) {}

    public record Machine(String name, List<Promised> promises) {}

    public record Promised(String task, String often, boolean household, int minutes) {}

    public record Document(UUID id, String label, String day, String amount) {}

    public record Channel(String code, String words) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance agreement(
                Frame frame, View view, List<Channel> channels, boolean trust, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Desk desk;

    @Inject
    Agreements agreements;

    @Inject
    PlanChanges changes;

    @Inject
    TakenOverAgreements takenOver;

    @Inject
    AgreementsInWords words;

    @Inject
    Renewals renewals;

    @Inject
    Homes homes;

    @Inject
    Customers customers;

    @Inject
    InvoiceLists invoices;

    @Inject
    TrustMoney trust;

    @Inject
    OfferMail mail;

    @Inject
    DocumentsToMake papers;

    @Inject
    CurrentTenant current;

    @GET
    @Transactional
    public TemplateInstance agreement(@PathParam("id") UUID id) {
        Frame frame = frames.of(Tab.AGREEMENTS);
        View view = view(found(id), frame);
        return page(frame, view, Said.filled(Map.of("day", frame.today().toString(), "by", view.signer())));
    }

    @POST
    @Path("acceptance")
    public Response accept(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    found(id);
                    String by = typed.text("by", 120);
                    var day = typed.day("day");
                    String channel = typed.oneOf("channel", Set.of("counter", "distance", "home", "elsewhere"));
                    typed.understood();
                    agreements.accept(id, new Yes(by, day, SaleChannel.ofCode(channel), typed.ticked("card")));
                    return SaidOnce.at("/" + slug + "/agreements/" + id, "agreed");
                },
                refusals -> {
                    Frame frame = frames.of(Tab.AGREEMENTS);
                    return page(frame, view(found(id), frame), Said.again(typed, refusals, frame.locale()));
                });
    }

    @POST
    @Path("renewal")
    public Response renew(@PathParam("slug") String slug, @PathParam("id") UUID id) {
        return desk.answer(
                () -> {
                    found(id);
                    UUID offer = renewals.offer(id, today.day()).id();
                    mail.write(List.of(offer));
                    return SaidOnce.at("/" + slug + "/agreements/" + offer, "offered");
                },
                refusals -> {
                    Frame frame = frames.of(Tab.AGREEMENTS);
                    var none = new Typed(new jakarta.ws.rs.core.MultivaluedHashMap<>());
                    return page(frame, view(found(id), frame), Said.again(none, refusals, frame.locale()));
                });
    }

    @GET
    @Path("pdf")
    @Produces("application/pdf")
    public Response pdf(@PathParam("id") UUID id) {
        current.run(current.id(), current.person(), () -> found(id));
        var paper = papers.newest(current.id(), PaperKind.OFFER, id).orElseThrow(NotFoundException::new);
        return PaperAnswer.of(paper);
    }

    private Agreement found(UUID id) {
        return agreements.find(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(Frame frame, View view, Said form) {
        List<Channel> channels = Arrays.stream(SaleChannel.values())
                .map(channel -> new Channel(channel.code(), channel.wording().in(frame.locale())))
                .toList();
        return Pages.agreement(frame, view, channels, trust.of(view.id()).isPresent(), form);
    }

    private View view(Agreement agreement, Frame frame) {
        return new AgreementView(agreement, frame)
                .of(agreements, changes, takenOver, words.of(agreement.id()), homes, customers, invoices);
    }
}
