package changeover.web.field;

import changeover.billing.estimates.Answering;
import changeover.billing.estimates.ConsentChannel;
import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.EstimateWorks;
import changeover.billing.estimates.NewAnswer;
import changeover.billing.estimates.Offering;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * What the visit found is estimated before it is repaired: offered at the home, and answered there where the place or its owner lets
 * a yes be signed on the spot.
 */
@Path("/{slug}/field/visits/{id}/estimates")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office", "technician"})
public class FieldEstimatePages {

    @CheckedTemplate(basePath = "field")
    static class Pages {
        static native TemplateInstance estimate(Frame frame, FieldEstimates.Sheet sheet, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Offering offering;

    @Inject
    Answering answering;

    @Inject
    EstimateWorks works;

    @Inject
    FieldEstimates views;

    @Inject
    Today today;

    @GET
    @Path("{estimate}")
    @Transactional
    public TemplateInstance one(@PathParam("id") UUID id, @PathParam("estimate") UUID estimate) {
        return sheet(id, estimate, Said.filled(Map.of("here", "yes")));
    }

    @POST
    @Path("{estimate}/offer")
    public Response offer(
            @PathParam("slug") String slug, @PathParam("id") UUID id, @PathParam("estimate") UUID estimate) {
        return desk.answer(
                () -> {
                    var _ = views.found(id, estimate);
                    var _ = offering.offer(estimate);
                    return SaidOnce.at(address(slug, id, estimate), "estimate-offered");
                },
                refusals -> sheet(id, estimate, above(refusals)));
    }

    /** Said before whoever does the work, now. */
    @POST
    @Path("{estimate}/answer")
    public Response answer(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @PathParam("estimate") UUID estimate,
            MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Estimate one = views.found(id, estimate);
                    boolean yes =
                            typed.oneOf("how", Set.of("accepted", "refused")).equals("accepted");
                    var said = new NewAnswer(
                            yes,
                            typed.text("byName", 200),
                            today.now(),
                            ConsentChannel.SITE,
                            typed.line("words", 1000));
                    boolean here = yes && typed.ticked("here");
                    if (here && !views.mayBeHere(one, views.visit(id))) {
                        typed.refuse(Refusal.of("estimate.visit-not-open").at("here"));
                    }
                    typed.understood();
                    var _ = answering.answer(estimate, said);
                    if (here) {
                        works.bind(estimate, id);
                    }
                    return SaidOnce.at(address(slug, id, estimate), yes && !here ? "estimate-accepted" : "kept");
                },
                refusals -> sheet(id, estimate, Said.again(typed, refusals, frames.locale())));
    }

    /** What keeps a draft from being offered is said above it, for its fields stand on another page. */
    private Said above(List<Refusal> refusals) {
        return Said.again(
                new Typed(new MultivaluedHashMap<>()),
                refusals.stream()
                        .map(one -> new Refusal(one.code(), null, one.facts()))
                        .toList(),
                frames.locale());
    }

    static String address(String slug, UUID visit, UUID estimate) {
        return "/" + slug + "/field/visits/" + visit + "/estimates/" + estimate;
    }

    private TemplateInstance sheet(UUID visit, UUID id, Said form) {
        Frame frame = frames.of(null);
        return Pages.estimate(frame, views.sheet(views.found(visit, id), views.visit(visit), frame), form);
    }
}
