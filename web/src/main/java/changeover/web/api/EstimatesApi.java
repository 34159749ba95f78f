package changeover.web.api;

import changeover.billing.documents.Documents;
import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.billing.documents.Wanted;
import changeover.billing.estimates.AnswersPutRight;
import changeover.billing.estimates.AskingForMore;
import changeover.billing.estimates.Estimate;
import changeover.billing.estimates.EstimateMoney;
import changeover.billing.estimates.Estimates;
import changeover.billing.estimates.NewEstimate;
import changeover.billing.estimates.Offering;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.web.session.Once;
import changeover.web.session.PaperAnswer;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Repair estimates: written, rewritten until they are offered, and read. */
@Path("/api/v1/{slug}/estimates")
@RolesAllowed({"owner", "office"})
public class EstimatesApi {

    @Inject
    Estimates estimates;

    @Inject
    Offering offering;

    @Inject
    EstimateMoney money;

    @Inject
    AskingForMore asking;

    @Inject
    AnswersPutRight putRight;

    @Inject
    Homes homes;

    @Inject
    Documents documents;

    @Inject
    DocumentsToMake papers;

    @Inject
    Businesses businesses;

    @Inject
    CurrentTenant current;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** @param state open, the first to expire first and drafts after them, or over, the newest first */
    @GET
    @Transactional
    public List<EstimateDocument.Row> list(
            @Nullable @QueryParam("state") String state,
            @QueryParam("skip") @DefaultValue("0") int skip,
            @QueryParam("count") @DefaultValue("200") int count) {
        int from = Math.clamp(skip, 0, 1_000_000);
        int most = Math.clamp(count, 1, 500);
        List<Estimate> rows = "over".equals(AskedInQuery.oneOf("state", state, Set.of("open", "over")))
                ? estimates.over(from, most)
                : estimates.open().stream().skip(from).limit(most).toList();
        return rows.stream().map(one -> EstimateDocument.row(one, today.day())).toList();
    }

    @GET
    @Path("{id}")
    @Transactional
    public Response one(@PathParam("id") UUID id) {
        Estimate one = found(id);
        return Edition.of(document(id), one.version());
    }

    /**
     * A draft: {@code home, words, validUntil}, and what it needs: {@code minutes}, {@code parts} ({@code code, quantity}),
     * {@code others} ({@code words, quantity, unit, unitPrice}, optionally {@code work}), {@code trip} (no). Optionally
     * {@code deposit}, {@code work} (maintenance, repair, installation) and {@code form} (separate, lump_sum), and the {@code call}, {@code visit} or {@code followUp} of that home which it comes from.
     */
    @POST
    public Response write(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "estimates " + body, () -> {
            Asked asked = Asked.of(body, json);
            UUID home = asked.id("home");
            UUID call = asked.idOrNone("call");
            UUID visit = asked.idOrNone("visit");
            UUID followUp = asked.idOrNone("followUp");
            var facts = AskedEstimate.read(asked, businesses.current().currency());
            asked.nothingElse().understood();
            var _ = homes.get(home).orElseThrow(NotFoundException::new);
            UUID id = estimates.write(new NewEstimate(home, call, visit, followUp, facts));
            return Once.Answer.made("/api/v1/" + slug + "/estimates/" + id, document(id));
        });
    }

    /** The draft as it is to be, whole, on the edition that If-Match names; the members of a new one without its origin. */
    @PUT
    @Path("{id}")
    public Response rewrite(
            @PathParam("id") UUID id,
            @HeaderParam("If-Match") String ifMatch,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "estimate " + id + " " + ifMatch + body, () -> {
            var _ = found(id);
            var edition = Edition.filledOn(ifMatch);
            Asked asked = Asked.of(body, json);
            var facts = AskedEstimate.read(asked, businesses.current().currency());
            asked.nothingElse().understood();
            estimates.rewrite(id, edition, facts);
            return Once.Answer.done(document(id));
        });
    }

    /** Offers the draft with the prices and taxes of today: it gets its number and stands. */
    @POST
    @Path("{id}/offer")
    public Response offer(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "estimate offer " + id + body, () -> {
            var _ = found(id);
            Asked.of(body, json).nothingElse().understood();
            var _ = offering.offer(id);
            return Once.Answer.done(document(id));
        });
    }

    /** The paper of an offered estimate, made now if it was not yet. */
    @GET
    @Path("{id}.pdf")
    @Produces("application/pdf")
    public Response pdf(@PathParam("id") UUID id) {
        current.run(current.id(), current.person(), () -> {
            Estimate one = found(id);
            if (one.offer() == null) {
                throw new NotFoundException();
            }
            documents.order(List.of(Wanted.of(PaperKind.ESTIMATE, id)));
            return one;
        });
        return PaperAnswer.of(
                papers.newest(current.id(), PaperKind.ESTIMATE, id).orElseThrow(NotFoundException::new));
    }

    Estimate found(UUID id) {
        return estimates.find(id).orElseThrow(NotFoundException::new);
    }

    EstimateDocument document(UUID id) {
        Estimate one = found(id);
        var answers = new EstimateDocument.Answers(money.more(one), asking.open(one), putRight.of(id));
        return EstimateDocument.of(one, estimates.facts(one), estimates.sum(one), answers, today.day());
    }
}
