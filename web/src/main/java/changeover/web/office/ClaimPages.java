package changeover.web.office;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.scheduling.claims.PartClaim;
import changeover.scheduling.claims.PartClaims;
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
import jakarta.ws.rs.DefaultValue;
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
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Claims on makers: those that wait for their credit, and one until it came or was refused. */
@Path("/{slug}/parts/claims")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class ClaimPages {

    private static final int PAGE = 50;

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance claims(
                Frame frame, List<ClaimRows.Line> open, List<ClaimRows.Line> over, int from, boolean more);

        static native TemplateInstance claim(Frame frame, ClaimRows.Line claim, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    PartClaims claims;

    @Inject
    ClaimRows rows;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @GET
    @Transactional
    public TemplateInstance list(@QueryParam("from") @DefaultValue("0") int from) {
        Frame frame = frames.of(Tab.PARTS);
        int start = Math.clamp(from, 0, 1_000_000);
        List<ClaimRows.Line> over = rows.lines(claims.over(start, PAGE + 1), frame);
        return Pages.claims(
                frame,
                start == 0 ? rows.lines(claims.open(), frame) : List.of(),
                over.stream().limit(PAGE).toList(),
                start,
                over.size() > PAGE);
    }

    @GET
    @Path("{claim}")
    @Transactional
    public TemplateInstance one(@PathParam("claim") UUID id) {
        PartClaim claim = found(id);
        return page(claim, Said.filled(filled(claim)));
    }

    /** The maker gave it a number, or the old part went back. */
    @POST
    @Path("{claim}/return")
    public Response write(
            @PathParam("slug") String slug, @PathParam("claim") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    String number = typed.line("number", 60);
                    LocalDate returned = typed.dayOrNone("returned");
                    LocalDate claimed = typed.dayOrNone("claimed");
                    int version = typed.whole("version", 0, Integer.MAX_VALUE);
                    typed.understood();
                    claims.write(id, number, returned, claimed, version);
                    return SaidOnce.at("/" + slug + "/parts/claims/" + id, "kept");
                },
                refusals -> again(id, Said.again(typed, refusals, frames.locale())));
    }

    /** The maker answered. */
    @POST
    @Path("{claim}/credit")
    public Response credit(
            @PathParam("slug") String slug, @PathParam("claim") UUID id, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = found(id);
                    boolean credited =
                            typed.oneOf("how", Set.of("credited", "refused")).equals("credited");
                    LocalDate day = typed.day("day");
                    @Nullable
                    Money amount = credited
                            ? typed.money("amount", businesses.current().currency())
                            : null;
                    String words = typed.line("words", 500);
                    typed.understood();
                    claims.answer(id, day, amount, words);
                    return SaidOnce.at("/" + slug + "/parts/claims/" + id, "kept");
                },
                refusals -> again(id, Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance again(UUID id, Said typed) {
        PartClaim claim = found(id);
        return page(claim, typed.over(filled(claim)));
    }

    private Map<String, String> filled(PartClaim claim) {
        Map<String, String> known = new HashMap<>();
        Money credit = claim.credit();
        LocalDate returned = claim.returnedOn();
        known.put("number", claim.number() == null ? "" : claim.number());
        known.put("returned", returned == null ? "" : returned.toString());
        known.put("claimed", claim.claimedOn().toString());
        known.put("how", "credited");
        known.put("day", today.day().toString());
        known.put("amount", credit == null ? "" : Written.of(credit, frames.locale()));
        return known;
    }

    private PartClaim found(UUID id) {
        return claims.find(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(PartClaim claim, Said form) {
        Frame frame = frames.of(Tab.PARTS);
        return Pages.claim(frame, ClaimRows.line(claim, frame), form);
    }
}
