package changeover.web.api;

import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Role;
import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
import changeover.scheduling.dayplan.TechnicianBase;
import changeover.scheduling.dayplan.TechnicianBases;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Where a technician's day begins and ends. A technician sees their own. */
@Path("/api/v1/{slug}/people/{id}/base")
@RolesAllowed({"owner", "office", "technician"})
public class BasesApi {

    private static final BigDecimal NORTH = new BigDecimal(90);
    private static final BigDecimal EAST = new BigDecimal(180);

    /** @param address null while nothing is written: the day then begins at the shop */
    public record BaseDocument(
            UUID person,
            @Nullable String address,
            @Nullable BigDecimal latitude,
            @Nullable BigDecimal longitude,
            int lunchMinutes) {}

    @Inject
    People people;

    @Inject
    TechnicianBases bases;

    @Inject
    SecurityIdentity identity;

    @Inject
    CurrentTenant current;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public Response base(@PathParam("id") UUID id) {
        if (identity.hasRole("technician") && !id.equals(current.person())) {
            throw new NotFoundException();
        }
        var _ = member(id);
        Optional<TechnicianBase> base = bases.of(id);
        return Edition.of(document(id, base), edition(base));
    }

    /**
     * Writes it on the edition that If-Match names, 0 for the first: {@code address, latitude, longitude}, optionally
     * {@code lunchMinutes}.
     */
    @PUT
    @RolesAllowed({"owner", "office"})
    public Response write(
            @PathParam("id") UUID id,
            @HeaderParam("If-Match") String ifMatch,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "base " + id + " " + ifMatch + body, () -> {
            Membership member = member(id);
            FilledOn seen = Edition.filledOn(ifMatch);
            Asked asked = Asked.of(body, json);
            var facts = new TechnicianBase.Facts(
                    asked.text("address", 200),
                    asked.decimal("latitude", NORTH.negate(), NORTH),
                    asked.decimal("longitude", EAST.negate(), EAST),
                    asked.wholeOr("lunchMinutes", 0, 120, TechnicianBases.USUAL_LUNCH));
            asked.nothingElse().understood();
            if (member.role() != Role.TECHNICIAN) {
                throw Refusal.of("base.technicians-only").thrown();
            }
            seen.mustBe(edition(bases.of(id)));
            return Once.Answer.done(document(
                    id, Optional.of(bases.write(id, facts, new FilledOn(seen.version() - 1)))));
        });
    }

    private static int edition(Optional<TechnicianBase> base) {
        return base.map(one -> one.version() + 1).orElse(0);
    }

    private Membership member(UUID person) {
        return people.of(person).orElseThrow(NotFoundException::new);
    }

    private static BaseDocument document(UUID person, Optional<TechnicianBase> base) {
        return base.map(TechnicianBase::facts)
                .map(facts -> new BaseDocument(
                        person, facts.address(), facts.latitude(), facts.longitude(), facts.lunchMinutes()))
                .orElseGet(() -> new BaseDocument(person, null, null, null, TechnicianBases.USUAL_LUNCH));
    }
}
