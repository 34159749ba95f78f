package changeover.web.field;

import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.EstimateFacts;
import changeover.billing.estimates.Estimates;
import changeover.billing.estimates.NewEstimate;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.scheduling.visits.VisitLists;
import changeover.web.session.Desk;
import changeover.web.session.EstimateForm;
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
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** An estimate is written at the home, of what the visit found, and changed until it is offered. */
@Path("/{slug}/field/visits/{id}/estimates")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office", "technician"})
public class FieldEstimateDraftPages {

    private static final int VALID_DAYS = 30;

    @CheckedTemplate(basePath = "field")
    static class Pages {
        static native TemplateInstance estimateform(Frame frame, FieldEstimates.Writing view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Estimates estimates;

    @Inject
    FieldEstimates views;

    @Inject
    Parts parts;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @GET
    @Path("new")
    @Transactional
    public TemplateInstance write(@PathParam("id") UUID id) {
        String until = today.day().plusDays(VALID_DAYS).toString();
        return form(views.visit(id), null, 0, Said.filled(Map.of("trip", "", "validUntil", until)));
    }

    @POST
    public Response write(
            @PathParam("slug") String slug, @PathParam("id") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        var form = new EstimateForm(typed);
        return desk.answer(
                () -> {
                    VisitLists.Row visit = views.visit(id);
                    EstimateFacts facts = read(form);
                    typed.understood();
                    UUID made = estimates.write(new NewEstimate(visit.homeId(), null, id, null, facts));
                    return SaidOnce.at(FieldEstimatePages.address(slug, id, made), "estimate-kept");
                },
                refusals -> form(views.visit(id), null, 0, again(typed, form, refusals)));
    }

    @GET
    @Path("{estimate}/draft")
    @Transactional
    public TemplateInstance change(@PathParam("id") UUID id, @PathParam("estimate") UUID estimate) {
        Estimate one = views.found(id, estimate);
        return form(
                views.visit(id),
                estimate,
                one.version(),
                Said.filled(EstimateForm.filled(estimates.facts(one), frames.locale())));
    }

    @POST
    @Path("{estimate}/draft")
    public Response change(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @PathParam("estimate") UUID estimate,
            MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        var form = new EstimateForm(typed);
        return desk.answer(
                () -> {
                    var _ = views.found(id, estimate);
                    int version = typed.whole("version", 0, Integer.MAX_VALUE);
                    EstimateFacts facts = read(form);
                    typed.understood();
                    estimates.rewrite(estimate, new FilledOn(version), facts);
                    return SaidOnce.at(FieldEstimatePages.address(slug, id, estimate), "kept");
                },
                refusals -> form(
                        views.visit(id), estimate, views.found(id, estimate).version(), again(typed, form, refusals)));
    }

    private EstimateFacts read(EstimateForm form) {
        return form.read(
                parts.all().stream().map(KnownPart::code).collect(Collectors.toSet()),
                businesses.current().currency());
    }

    private Said again(Typed typed, EstimateForm form, List<Refusal> refusals) {
        return Said.again(typed, form.placed(refusals), frames.locale());
    }

    private TemplateInstance form(VisitLists.Row visit, @Nullable UUID id, int version, Said form) {
        Frame frame = frames.of(null);
        return Pages.estimateform(frame, views.writing(visit, id, version, form, frame), form);
    }
}
