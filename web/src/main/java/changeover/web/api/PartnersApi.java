package changeover.web.api;

import changeover.contracts.tenants.Today;
import changeover.scheduling.partners.Partner;
import changeover.scheduling.partners.PartnerPaper;
import changeover.scheduling.partners.Partners;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/** Licensed partners with their papers. */
@Path("/api/v1/{slug}/partners")
@RolesAllowed({"owner", "office"})
public class PartnersApi {

    private static final int SIXTY = 60;

    @Inject
    Partners partners;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public List<Partner> all() {
        return partners.all();
    }

    /** A partner: {@code name, trade} (electrical, gas, plumbing, refrigeration, other), optionally {@code phone, email}. */
    @POST
    public Response add(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "partners " + body, () -> {
            Asked asked = Asked.of(body, json);
            var facts = new Partners.Facts(
                    asked.text("name", 120),
                    asked.oneOf("trade", Set.copyOf(Partner.TRADES)),
                    asked.line("phone", 40),
                    asked.line("email", 200));
            asked.nothingElse().understood();
            UUID id = partners.add(facts);
            return Once.Answer.made("/api/v1/" + slug + "/partners/" + id, known(id));
        });
    }

    @GET
    @Path("{partner}")
    @Transactional
    public Partner one(@PathParam("partner") UUID partner) {
        return known(partner);
    }

    /**
     * A paper of theirs: {@code kind} (licence, insurance, other) and {@code expires}, its last day; optionally {@code number} and
     * the days before it to be told of it ({@code remindDays}).
     */
    @POST
    @Path("{partner}/papers")
    public Response addPaper(
            @PathParam("partner") UUID partner, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "partner paper " + partner + body, () -> {
            var _ = known(partner);
            Asked asked = Asked.of(body, json);
            var paper = new Partners.Paper(
                    asked.oneOf("kind", Set.copyOf(PartnerPaper.KINDS)),
                    asked.line("number", 60),
                    asked.day("expires"),
                    asked.wholeOr("remindDays", 1, 365, SIXTY));
            asked.nothingElse().understood();
            partners.addPaper(partner, paper);
            return Once.Answer.done(known(partner));
        });
    }

    /** It is put away: a new one took its place. */
    @POST
    @Path("{partner}/papers/{held}/end")
    public Response putAway(
            @PathParam("partner") UUID partner,
            @PathParam("held") UUID held,
            @HeaderParam("Operation-Id") String operation) {
        return once.answer(operation, "partner paper end " + partner + held, () -> {
            if (known(partner).papers().stream().noneMatch(paper -> paper.id().equals(held))) {
                throw new NotFoundException();
            }
            partners.putAway(held, today.day());
            return Once.Answer.done(known(partner));
        });
    }

    /** We work with them no longer. */
    @POST
    @Path("{partner}/end")
    public Response end(@PathParam("partner") UUID partner, @HeaderParam("Operation-Id") String operation) {
        return once.answer(operation, "partner end " + partner, () -> {
            Partner gone = known(partner);
            partners.end(partner, today.day());
            return Once.Answer.done(gone);
        });
    }

    private Partner known(UUID partner) {
        return partners.find(partner).orElseThrow(NotFoundException::new);
    }
}
