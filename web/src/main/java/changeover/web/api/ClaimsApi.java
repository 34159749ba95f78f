package changeover.web.api;

import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.scheduling.claims.NewClaim;
import changeover.scheduling.claims.PartClaim;
import changeover.scheduling.claims.PartClaims;
import changeover.scheduling.visits.VisitLists;
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
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Claims on makers for parts that were replaced under warranty. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office"})
public class ClaimsApi {

    /** @param answered null while the maker owes an answer; {@code credited} null where it was refused */
    public record ClaimDocument(
            UUID id,
            UUID visit,
            UUID home,
            String part,
            @Nullable String oldSerial,
            @Nullable String newSerial,
            String maker,
            @Nullable String number,
            LocalDate claimedOn,
            @Nullable LocalDate returnedOn,
            @Nullable Amount credit,
            int version,
            @Nullable LocalDate answered,
            @Nullable Amount credited,
            @Nullable String words) {}

    @Inject
    PartClaims claims;

    @Inject
    VisitLists visits;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** Those that no maker has answered, the oldest first. */
    @GET
    @Path("part-claims")
    @Transactional
    public List<ClaimDocument> open() {
        return claims.open().stream().map(ClaimsApi::document).toList();
    }

    @GET
    @Path("part-claims/{claim}")
    @Transactional
    public ClaimDocument one(@PathParam("claim") UUID id) {
        return document(found(id));
    }

    /**
     * A part that the visit used is claimed: {@code part, maker}, optionally {@code equipment, oldSerial, newSerial, number, credit} and
     * {@code claimedOn} (today).
     */
    @POST
    @Path("visits/{id}/claims")
    public Response claim(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "part claims " + id + body, () -> {
            var _ = visits.one(id).orElseThrow(NotFoundException::new);
            Asked asked = Asked.of(body, json);
            var facts = new NewClaim(
                    id,
                    asked.idOrNone("equipment"),
                    asked.text("part", 60),
                    asked.line("oldSerial", 80),
                    asked.line("newSerial", 80),
                    asked.text("maker", 120),
                    asked.line("number", 60),
                    asked.value("credit") == null
                            ? null
                            : asked.money("credit", businesses.current().currency()),
                    asked.dayOrNone("claimedOn"));
            asked.nothingElse().understood();
            PartClaim made = claims.claim(Once.named(operation), facts);
            return Once.Answer.made("/api/v1/" + slug + "/part-claims/" + made.id(), document(made));
        });
    }

    /** The number and the old part: {@code version} that was read, {@code number, returnedOn}; what is left out is empty. Optionally the day {@code claimedOn}. */
    @POST
    @Path("part-claims/{claim}/return")
    public Response write(@PathParam("claim") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "claim return " + id + body, () -> {
            var _ = found(id);
            Asked asked = Asked.of(body, json);
            String number = asked.line("number", 60);
            LocalDate returned = asked.dayOrNone("returnedOn");
            LocalDate claimed = asked.dayOrNone("claimedOn");
            int version = asked.whole("version", 0, Integer.MAX_VALUE);
            asked.nothingElse().understood();
            claims.write(id, number, returned, claimed, version);
            return Once.Answer.done(document(found(id)));
        });
    }

    /** The maker answered: {@code how} (credited, refused), {@code amount} of a credit, {@code words}, optionally {@code day}. */
    @POST
    @Path("part-claims/{claim}/credit")
    public Response credit(@PathParam("claim") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "claim credit " + id + body, () -> {
            var _ = found(id);
            Asked asked = Asked.of(body, json);
            boolean credited = asked.oneOf("how", Set.of("credited", "refused")).equals("credited");
            @Nullable
            Money amount = credited ? asked.money("amount", businesses.current().currency()) : null;
            String words = asked.line("words", 500);
            LocalDate day = asked.dayOrNone("day");
            asked.nothingElse().understood();
            claims.answer(id, day == null ? today.day() : day, amount, words);
            return Once.Answer.done(document(found(id)));
        });
    }

    private PartClaim found(UUID id) {
        return claims.find(id).orElseThrow(NotFoundException::new);
    }

    private static ClaimDocument document(PartClaim one) {
        PartClaim.Answer answer = one.answer();
        return new ClaimDocument(
                one.id(),
                one.visitId(),
                one.homeId(),
                one.partCode(),
                one.oldSerial(),
                one.newSerial(),
                one.maker(),
                one.number(),
                one.claimedOn(),
                one.returnedOn(),
                one.credit() == null ? null : Amount.of(one.credit()),
                one.version(),
                answer == null ? null : answer.day(),
                answer == null || answer.amount() == null ? null : Amount.of(answer.amount()),
                answer == null ? null : answer.words());
    }
}
