package changeover.web.office;

import changeover.billing.documents.Documents;
import changeover.billing.documents.PaperKind;
import changeover.billing.papers.BusinessPaper;
import changeover.billing.papers.BusinessPapers;
import changeover.contracts.customers.Customer;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Today;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.PaperAnswer;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import changeover.web.session.Uploaded;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;

/** The business's own papers: its licence and insurance with their last days and files, sent to who asks for them. */
@Path("/{slug}/shop/papers")
@RolesAllowed({"owner", "office"})
public class OwnPaperPages {

    private static final int SHOWN = 50;
    private static final int SIXTY = 60;

    /** @param state over, soon, or empty */
    public record Line(
            UUID id, String kind, String name, String number, String person, String last, String state, boolean file) {}

    public record Whose(UUID id, String name) {}

    public record Sent(String day, String customer) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance ownpapers(Frame frame, List<Line> papers, List<Whose> people, Said form);

        static native TemplateInstance ownpaper(
                Frame frame, Line paper, List<Sent> sent, Said form, String asked, List<Customer> found);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    BusinessPapers papers;

    @Inject
    Documents documents;

    @Inject
    ChosenCustomer chosen;

    @Inject
    People people;

    @Inject
    Today today;

    @GET
    @Produces(MediaType.TEXT_HTML)
    @Transactional
    public TemplateInstance list() {
        return page(Said.filled(Map.of("kind", "licence", "remindDays", String.valueOf(SIXTY))));
    }

    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @Produces(MediaType.TEXT_HTML)
    public Response add(
            @PathParam("slug") String slug,
            @RestForm("kind") @Nullable String kind,
            @RestForm("name") @Nullable String name,
            @RestForm("number") @Nullable String number,
            @RestForm("person") @Nullable String person,
            @RestForm("expires") @Nullable String expires,
            @RestForm("remindDays") @Nullable String remind,
            @RestForm("file") @Nullable FileUpload file) {
        var fields = new MultivaluedHashMap<String, String>();
        put(fields, "kind", kind);
        put(fields, "name", name);
        put(fields, "number", number);
        put(fields, "person", person);
        put(fields, "expires", expires);
        put(fields, "remindDays", remind);
        var typed = new Typed(fields);
        byte[] bytes = Uploaded.bytes(file);
        return desk.answer(
                () -> {
                    var facts = new BusinessPapers.Facts(
                            typed.oneOf("kind", Set.copyOf(BusinessPaper.KINDS)),
                            typed.text("name", 120),
                            typed.line("number", 60),
                            typed.idOrNone("person"),
                            typed.dayOrNone("expires"),
                            typed.whole("remindDays", 1, 365));
                    typed.understood();
                    papers.add(facts, bytes);
                    return SaidOnce.at("/" + slug + "/shop/papers", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale())));
    }

    private static void put(MultivaluedMap<String, String> fields, String field, @Nullable String value) {
        fields.putSingle(field, value == null ? "" : value);
    }

    @GET
    @Path("{paper}")
    @Produces(MediaType.TEXT_HTML)
    @Transactional
    public TemplateInstance one(@PathParam("paper") UUID paper, @QueryParam("who") @DefaultValue("") String who) {
        return page(paper, Said.blank(), who.strip());
    }

    @GET
    @Path("{paper}/file.pdf")
    @Transactional
    public Response file(@PathParam("paper") UUID paper) {
        return documents.newest(PaperKind.PAPER, paper).map(PaperAnswer::of).orElseThrow(NotFoundException::new);
    }

    @POST
    @Path("{paper}/sending")
    @Produces(MediaType.TEXT_HTML)
    public Response send(
            @PathParam("slug") String slug, @PathParam("paper") UUID paper, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = known(paper);
                    UUID customer = typed.id("known");
                    typed.understood();
                    papers.send(paper, customer);
                    return SaidOnce.at("/" + slug + "/shop/papers/" + paper, "kept");
                },
                refusals -> page(paper, Said.again(typed, refusals, frames.locale()), ""));
    }

    @POST
    @Path("{paper}/end")
    @Produces(MediaType.TEXT_HTML)
    public Response putAway(@PathParam("slug") String slug, @PathParam("paper") UUID paper) {
        return desk.answer(
                () -> {
                    var _ = known(paper);
                    papers.putAway(paper, today.day());
                    return SaidOnce.at("/" + slug + "/shop/papers", "kept");
                },
                _ -> page(Said.blank()));
    }

    private BusinessPaper known(UUID paper) {
        return papers.find(paper).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(Said form) {
        Frame frame = frames.of(Tab.SHOP);
        return Pages.ownpapers(
                frame,
                papers.all().stream().map(one -> line(one, frame)).toList(),
                people.all().stream()
                        .filter(one -> one.worksOn(frame.today()))
                        .map(one -> new Whose(one.personId(), one.name()))
                        .toList(),
                form);
    }

    private TemplateInstance page(UUID id, Said form, String asked) {
        Frame frame = frames.of(Tab.SHOP);
        return Pages.ownpaper(
                frame,
                line(known(id), frame),
                papers.sendings(SHOWN).stream()
                        .filter(one -> one.paper().equals(id))
                        .map(one -> new Sent(frame.brief(one.day()), one.customer()))
                        .toList(),
                form,
                asked,
                chosen.found(form, asked));
    }

    static Line line(BusinessPaper one, Frame frame) {
        LocalDate last = one.expiresOn();
        String state = one.isOver(frame.today()) ? "over" : one.isSpokenOf(frame.today()) ? "soon" : "";
        String number = one.number();
        return new Line(
                one.id(),
                one.kind(),
                one.name(),
                number == null ? "" : number,
                one.personName() == null ? "" : one.personName(),
                last == null ? "" : frame.brief(last),
                state,
                one.file());
    }
}
