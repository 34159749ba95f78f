package changeover.web.office;

import changeover.billing.documents.Documents;
import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.billing.documents.Wanted;
import changeover.billing.estimates.Answering;
import changeover.billing.estimates.ConsentChannel;
import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.Estimates;
import changeover.billing.estimates.NewAnswer;
import changeover.billing.estimates.Offering;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.words.Refusal;
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
import java.util.List;
import java.util.Set;
import java.util.UUID;

/** Repair estimates: those that wait, those that are over, and one with its answer. */
@Path("/{slug}/estimates")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class EstimatePages {

    private static final int PAGE = 50;

    /** A need that a visit found and nobody has estimated yet. */
    public record ToWrite(UUID id, UUID homeId, String home, UUID visitId, String since, String words) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance estimates(
                Frame frame,
                List<ToWrite> toWrite,
                List<EstimateRowsInWords.Line> toDo,
                List<EstimateRowsInWords.Line> open,
                List<EstimateRowsInWords.Line> over,
                int from,
                boolean more);

        static native TemplateInstance estimate(Frame frame, EstimateInWords.Sheet sheet, Said form);

        static native TemplateInstance estimateback(Frame frame, EstimateInWords.Sheet sheet, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    EstimateRowsInWords rows;

    @Inject
    EstimatesToWrite toWrite;

    @Inject
    EstimateInWords inWords;

    @Inject
    Estimates estimates;

    @Inject
    Offering offering;

    @Inject
    Answering answering;

    @Inject
    SaidAt saidAt;

    @Inject
    Documents documents;

    @Inject
    DocumentsToMake papers;

    @Inject
    CurrentTenant current;

    @GET
    @Transactional
    public TemplateInstance list(@QueryParam("from") @DefaultValue("0") int from) {
        Frame frame = frames.of(Tab.TODAY);
        int start = Math.clamp(from, 0, 1_000_000);
        List<EstimateRowsInWords.Line> over = rows.over(frame, start, PAGE + 1);
        return Pages.estimates(
                frame,
                start == 0 ? toWrite.all(frame) : List.of(),
                start == 0 ? rows.toDo(frame) : List.of(),
                start == 0 ? rows.open(frame) : List.of(),
                over.stream().limit(PAGE).toList(),
                start,
                over.size() > PAGE);
    }

    @GET
    @Path("{estimate}")
    @Transactional
    public TemplateInstance one(@PathParam("estimate") UUID id) {
        return page(found(id), saidAt.now());
    }

    @POST
    @Path("{estimate}/offer")
    public Response offer(@PathParam("slug") String slug, @PathParam("estimate") UUID id) {
        return desk.answer(
                () -> {
                    var _ = found(id);
                    var _ = offering.offer(id);
                    return at(slug, id, "estimate-offered");
                },
                refusals -> page(found(id), above(refusals)));
    }

    /** A yes or a no that reached the office; one by the customer's own link is the customer's to give. */
    @POST
    @Path("{estimate}/answer")
    public Response answer(
            @PathParam("slug") String slug, @PathParam("estimate") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    boolean yes =
                            typed.oneOf("how", Set.of("accepted", "refused")).equals("accepted");
                    var answer = new NewAnswer(
                            yes,
                            typed.text("byName", 200),
                            saidAt.read(typed),
                            ConsentChannel.of(typed.oneOf("channel", ConsentChannel.writtenDown())),
                            typed.line("words", 1000));
                    typed.understood();
                    var _ = answering.answer(id, answer);
                    return at(slug, id, yes ? "estimate-accepted" : "kept");
                },
                refusals -> page(found(id), Said.again(typed, refusals, frames.locale())));
    }

    @GET
    @Path("{estimate}/withdrawal")
    @Transactional
    public TemplateInstance withdraw(@PathParam("estimate") UUID id) {
        Frame frame = frames.of(Tab.TODAY);
        return Pages.estimateback(frame, inWords.of(found(id), frame), Said.blank());
    }

    @POST
    @Path("{estimate}/withdrawal")
    public Response withdraw(
            @PathParam("slug") String slug, @PathParam("estimate") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    String why = typed.text("why", 500);
                    typed.understood();
                    var _ = answering.withdraw(id, frames.of(Tab.TODAY).person(), why);
                    return at(slug, id, "kept");
                },
                refusals -> {
                    Frame frame = frames.of(Tab.TODAY);
                    return Pages.estimateback(
                            frame, inWords.of(found(id), frame), Said.again(typed, refusals, frame.locale()));
                });
    }

    @GET
    @Path("{estimate}/pdf")
    @Produces("application/pdf")
    public Response pdf(@PathParam("estimate") UUID id) {
        current.run(current.id(), current.person(), () -> {
            Estimate one = found(id);
            if (one.offer() == null) {
                throw new NotFoundException();
            }
            documents.order(List.of(Wanted.of(PaperKind.ESTIMATE, one.id())));
            return one;
        });
        return PaperAnswer.of(
                papers.newest(current.id(), PaperKind.ESTIMATE, id).orElseThrow(NotFoundException::new));
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

    private static String at(String slug, UUID id, String said) {
        return SaidOnce.at("/" + slug + "/estimates/" + id, said);
    }

    private Estimate found(UUID id) {
        return estimates.find(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(Estimate one, Said form) {
        Frame frame = frames.of(Tab.TODAY);
        return Pages.estimate(frame, inWords.of(one, frame), form);
    }
}
