package changeover.web.office;

import changeover.billing.estimates.AnswersPutRight;
import changeover.billing.estimates.AskingForMore;
import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.EstimateMoney;
import changeover.billing.estimates.Estimates;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
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
import java.util.Map;
import java.util.UUID;

/** The customer is asked for a yes to more, to be given on their own page; and an answer written by mistake is taken back. */
@Path("/{slug}/estimates/{estimate}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class EstimateQuestionPages {

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance estimateask(Frame frame, EstimateInWords.Sheet sheet, Said form);

        static native TemplateInstance estimateundo(Frame frame, EstimateInWords.Sheet sheet, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Estimates estimates;

    @Inject
    EstimateMoney money;

    @Inject
    AskingForMore asking;

    @Inject
    AnswersPutRight putRight;

    @Inject
    EstimateInWords inWords;

    @Inject
    Businesses businesses;

    /** What the draft asks beyond the yes stands there already. */
    @GET
    @Path("questions")
    @Transactional
    public TemplateInstance ask(@PathParam("estimate") UUID id) {
        Estimate one = found(id);
        return ask(
                one,
                Said.filled(Map.of(
                        "amount",
                        money.wholeAsked(one)
                                .map(whole -> Written.of(whole, frames.locale()))
                                .orElse(""))));
    }

    @POST
    @Path("questions")
    public Response ask(
            @PathParam("slug") String slug, @PathParam("estimate") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    Money whole = typed.money("amount", businesses.current().currency());
                    String words = typed.text("words", 1000);
                    typed.understood();
                    var _ = asking.ask(id, whole, words);
                    return SaidOnce.at("/" + slug + "/estimates/" + id, "estimate-asked");
                },
                refusals -> ask(found(id), Said.again(typed, refusals, frames.locale())));
    }

    @GET
    @Path("answer/undoing")
    @Transactional
    public TemplateInstance undo(@PathParam("estimate") UUID id) {
        return undo(found(id), Said.blank());
    }

    @POST
    @Path("answer/undoing")
    public Response undo(
            @PathParam("slug") String slug, @PathParam("estimate") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    String why = typed.text("why", 500);
                    typed.understood();
                    var _ = putRight.takeBack(id, frames.of(Tab.TODAY).person(), why);
                    return SaidOnce.at("/" + slug + "/estimates/" + id, "kept");
                },
                refusals -> undo(found(id), Said.again(typed, refusals, frames.locale())));
    }

    private Estimate found(UUID id) {
        return estimates.find(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance ask(Estimate one, Said form) {
        Frame frame = frames.of(Tab.TODAY);
        return Pages.estimateask(frame, inWords.of(one, frame), form);
    }

    private TemplateInstance undo(Estimate one, Said form) {
        Frame frame = frames.of(Tab.TODAY);
        return Pages.estimateundo(frame, inWords.of(one, frame), form);
    }
}
