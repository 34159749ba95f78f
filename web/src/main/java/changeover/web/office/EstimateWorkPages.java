package changeover.web.office;

import changeover.billing.estimates.ConsentChannel;
import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.EstimateMoney;
import changeover.billing.estimates.EstimateWorks;
import changeover.billing.estimates.Estimates;
import changeover.billing.estimates.NewAnswer;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Wording;
import changeover.scheduling.visits.VisitKind;
import changeover.web.office.DepositPages.Choice;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import changeover.web.session.Written;
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
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** What follows a yes to an estimate: the visit that does it, its deposit, and a yes to more. */
@Path("/{slug}/estimates/{estimate}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class EstimateWorkPages {

    private static final int DAY_IN_MINUTES = 1440;

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance estimatevisit(
                Frame frame, EstimateInWords.Sheet sheet, List<Choice> visits, Said form);

        static native TemplateInstance estimatemore(Frame frame, EstimateInWords.Sheet sheet, Said form);

        static native TemplateInstance estimatedeposit(
                Frame frame, EstimateInWords.Sheet sheet, List<Choice> ways, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Estimates estimates;

    @Inject
    EstimateWorks works;

    @Inject
    EstimateMoney money;

    @Inject
    EstimateInWords inWords;

    @Inject
    SaidAt saidAt;

    @Inject
    Businesses businesses;

    @GET
    @Path("visits")
    @Transactional
    public TemplateInstance visit(@PathParam("estimate") UUID id) {
        Estimate one = found(id);
        String minutes = one.minutes() == 0 ? "60" : String.valueOf(one.minutes());
        String last = frames.of(Tab.TODAY).today().plusDays(14).toString();
        return visitPage(one, Said.filled(Map.of("visit", "", "minutes", minutes, "last", last)));
    }

    /** A visit that stands, or a new one between today and its last day. */
    @POST
    @Path("visits")
    public Response visit(
            @PathParam("slug") String slug, @PathParam("estimate") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    UUID visit = typed.idOrNone("visit");
                    LocalDate last = visit == null ? typed.day("last") : LocalDate.EPOCH;
                    int minutes = visit == null ? typed.whole("minutes", 5, DAY_IN_MINUTES) : 0;
                    typed.understood();
                    if (visit == null) {
                        return SaidOnce.at(
                                "/" + slug + "/visits/" + works.makeVisit(id, last, minutes), "estimate-visit");
                    }
                    works.bind(id, visit);
                    return SaidOnce.at("/" + slug + "/estimates/" + id, "kept");
                },
                refusals -> visitPage(found(id), Said.again(typed, refusals, frames.locale())));
    }

    @GET
    @Path("consents")
    @Transactional
    public TemplateInstance more(@PathParam("estimate") UUID id) {
        Estimate one = found(id);
        String amount = money.wholeAsked(one)
                .map(whole -> Written.of(whole, frames.locale()))
                .orElse("");
        return morePage(one, saidAt.now(Map.of("amount", amount)));
    }

    /** The customer says yes to more, by the same ways as to the whole. */
    @POST
    @Path("consents")
    public Response more(
            @PathParam("slug") String slug, @PathParam("estimate") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    Money whole = typed.money("amount", businesses.current().currency());
                    var said = new NewAnswer(
                            true,
                            typed.text("byName", 200),
                            saidAt.read(typed),
                            ConsentChannel.of(typed.oneOf("channel", ConsentChannel.writtenDown())),
                            typed.text("words", 1000));
                    typed.understood();
                    works.more(id, whole, said);
                    return SaidOnce.at("/" + slug + "/estimates/" + id, "kept");
                },
                refusals -> morePage(found(id), Said.again(typed, refusals, frames.locale())));
    }

    @GET
    @Path("deposits")
    @Transactional
    public TemplateInstance deposit(@PathParam("estimate") UUID id) {
        Estimate one = found(id);
        Money asked = one.deposit();
        return depositPage(
                one,
                Said.filled(Map.of(
                        "amount",
                        asked == null ? "" : Written.of(asked, frames.locale()),
                        "day",
                        frames.of(Tab.TODAY).today().toString(),
                        "way",
                        "card")));
    }

    @POST
    @Path("deposits")
    public Response deposit(
            @PathParam("slug") String slug, @PathParam("estimate") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    Money amount = typed.money("amount", businesses.current().currency());
                    LocalDate day = typed.day("day");
                    var way = DepositPages.way(typed);
                    String reference = typed.line("reference", 140);
                    typed.understood();
                    var _ = money.take(id, day, way, amount, reference);
                    return SaidOnce.at("/" + slug + "/estimates/" + id, "kept");
                },
                refusals -> depositPage(found(id), Said.again(typed, refusals, frames.locale())));
    }

    private Estimate found(UUID id) {
        return estimates.find(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance visitPage(Estimate one, Said form) {
        Frame frame = frames.of(Tab.TODAY);
        List<Choice> visits = works.candidates(one).stream()
                .map(visit -> new Choice(visit.id().toString(), words(visit, frame)))
                .toList();
        return Pages.estimatevisit(frame, inWords.of(one, frame), visits, form);
    }

    private static String words(EstimateWorks.Candidate visit, Frame frame) {
        String when = visit.day() == null
                ? frame.brief(visit.first()) + " – " + frame.brief(visit.last())
                : frame.brief(visit.day());
        return kind(visit.kind()).in(frame.locale()) + ", " + when;
    }

    private static Wording kind(VisitKind kind) {
        return switch (kind) {
            case PLAN -> new Wording("The plan’s visit", "Visite de la formule");
            case CALL -> new Wording("Visit after a call", "Visite après un appel");
            case RETURN -> new Wording("Return visit", "Visite de retour");
            case EXTRA -> new Wording("One more visit", "Visite de plus");
        };
    }

    private TemplateInstance morePage(Estimate one, Said form) {
        Frame frame = frames.of(Tab.TODAY);
        return Pages.estimatemore(frame, inWords.of(one, frame), form);
    }

    private TemplateInstance depositPage(Estimate one, Said form) {
        Frame frame = frames.of(Tab.TODAY);
        return Pages.estimatedeposit(frame, inWords.of(one, frame), DepositPages.ways(frame), form);
    }
}
