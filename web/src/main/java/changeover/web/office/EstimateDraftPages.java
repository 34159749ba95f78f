package changeover.web.office;

import changeover.billing.documents.Words;
import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.EstimateFacts;
import changeover.billing.estimates.Estimates;
import changeover.billing.estimates.NewEstimate;
import changeover.billing.invoices.DraftsByHand;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import changeover.web.session.Desk;
import changeover.web.session.EstimateForm;
import changeover.web.session.FormRows;
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
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** An estimate is written for a home, from a call or from what a visit found, and changed until it is offered. */
@Path("/{slug}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class EstimateDraftPages {

    private static final int VALID_DAYS = 30;

    public record Choice(String code, String words) {}

    /** @param id null for a new one; {@code version} then stands for nothing */
    public record View(
            UUID homeId,
            String home,
            @Nullable UUID id,
            int version,
            List<Choice> parts,
            List<Choice> units,
            List<FormRows.Row> partRows,
            List<FormRows.Row> otherRows) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance estimateform(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Estimates estimates;

    @Inject
    EstimatesToWrite toWrite;

    @Inject
    Parts parts;

    @Inject
    Homes homes;

    @Inject
    Businesses businesses;

    @GET
    @Path("homes/{home}/estimates/new")
    @Transactional
    public TemplateInstance write(
            @PathParam("home") UUID home,
            @Nullable @QueryParam("call") UUID call,
            @Nullable @QueryParam("visit") UUID visit,
            @Nullable @QueryParam("followUp") UUID followUp) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("call", call == null ? "" : call.toString());
        fields.put("visit", visit == null ? "" : visit.toString());
        fields.put("followUp", followUp == null ? "" : followUp.toString());
        Frame frame = frames.of(Tab.TODAY);
        toWrite.all(frame).stream()
                .filter(one -> one.id().equals(followUp) && one.homeId().equals(home))
                .findFirst()
                .ifPresent(one -> {
                    fields.put("visit", one.visitId().toString());
                    fields.put("words", one.words());
                });
        fields.put("trip", "yes");
        fields.put("validUntil", frame.today().plusDays(VALID_DAYS).toString());
        return page(home, null, 0, Said.filled(fields));
    }

    @POST
    @Path("homes/{home}/estimates")
    public Response write(
            @PathParam("slug") String slug, @PathParam("home") UUID home, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        var form = new EstimateForm(typed);
        return desk.answer(
                () -> {
                    line(home);
                    EstimateFacts facts = read(form);
                    var wanted = new NewEstimate(
                            home, typed.idOrNone("call"), typed.idOrNone("visit"), typed.idOrNone("followUp"), facts);
                    typed.understood();
                    return SaidOnce.at("/" + slug + "/estimates/" + estimates.write(wanted), "estimate-kept");
                },
                refusals -> page(home, null, 0, again(typed, form, refusals)));
    }

    @GET
    @Path("estimates/{estimate}/draft")
    @Transactional
    public TemplateInstance change(@PathParam("estimate") UUID id) {
        Estimate one = found(id);
        return page(
                one.homeId(),
                id,
                one.version(),
                Said.filled(EstimateForm.filled(estimates.facts(one), frames.locale())));
    }

    @POST
    @Path("estimates/{estimate}/draft")
    public Response change(
            @PathParam("slug") String slug, @PathParam("estimate") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        var form = new EstimateForm(typed);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    int version = typed.whole("version", 0, Integer.MAX_VALUE);
                    EstimateFacts facts = read(form);
                    typed.understood();
                    estimates.rewrite(id, new FilledOn(version), facts);
                    return SaidOnce.at("/" + slug + "/estimates/" + id, "kept");
                },
                refusals -> {
                    Estimate one = found(id);
                    return page(one.homeId(), id, one.version(), again(typed, form, refusals));
                });
    }

    private EstimateFacts read(EstimateForm form) {
        return form.read(
                parts.all().stream().map(KnownPart::code).collect(Collectors.toSet()),
                businesses.current().currency());
    }

    private Said again(Typed typed, EstimateForm form, List<Refusal> refusals) {
        return Said.again(typed, form.placed(refusals), frames.locale());
    }

    private Estimate found(UUID id) {
        return estimates.find(id).orElseThrow(NotFoundException::new);
    }

    private String line(UUID home) {
        return homes.get(home).orElseThrow(NotFoundException::new).line();
    }

    private TemplateInstance page(UUID home, @Nullable UUID id, int version, Said form) {
        Frame frame = frames.of(Tab.TODAY);
        Words paper = Words.in(frame.locale());
        return Pages.estimateform(
                frame,
                new View(
                        home,
                        line(home),
                        id,
                        version,
                        parts.all().stream()
                                .map(part ->
                                        new Choice(part.code(), part.name().in(frame.locale()) + ", " + part.code()))
                                .toList(),
                        DraftsByHand.UNITS.stream()
                                .map(code -> new Choice(code, paper.unit(code)))
                                .toList(),
                        EstimateForm.parts(form),
                        EstimateForm.others(form)),
                form);
    }
}
