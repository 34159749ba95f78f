package changeover.web.api;

import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.BusinessProfile;
import changeover.contracts.tenants.Businesses;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.Set;

/** The business itself: what it is called and where its clock stands, and what is printed on its paper. */
@Path("/api/v1/{slug}/business")
@RolesAllowed({"owner", "office"})
public class BusinessApi {

    /**
     * The business as the API says it. What stands before {@code paper} was decided when it was opened.
     *
     * @param region ISO 3166-2 with its country: CA-QC
     * @param paper what the owner writes: address, telephone, numbers, and how the rules treat an open season and a bill
     */
    public record BusinessDocument(
            String slug,
            String name,
            String language,
            String region,
            String zone,
            String currency,
            LocalDate openedOn,
            BusinessProfile.Facts paper,
            int version) {}

    @Inject
    Businesses businesses;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public Response business() {
        return Edition.of(document(), businesses.profile().version());
    }

    /**
     * Writes the paper anew, whole, on the edition that If-Match names: {@code street, city, region, postal, country,
     * invoiceTermsDays, theme} (system, day, night), optionally {@code tagline, phone, email, licence, gstNumber,
     * qstNumber, smallSupplier, carryOpenSeason, visitMinutesAtMost} (30 to 600; it counts from the next year that is laid).
     */
    @PUT
    @RolesAllowed("owner")
    public Response rewrite(
            @HeaderParam("If-Match") String ifMatch, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "business " + ifMatch + body, () -> {
            BusinessProfile profile = businesses.profile();
            Edition.filledOn(ifMatch).mustBe(profile.version());
            Asked asked = Asked.of(body, json);
            BusinessProfile.Facts facts = facts(asked);
            asked.nothingElse().understood();
            profile.rewrite(facts);
            businesses.keep();
            return Once.Answer.done(document());
        });
    }

    private static BusinessProfile.Facts facts(Asked asked) {
        return new BusinessProfile.Facts(
                asked.line("tagline", 80),
                asked.text("street", 200),
                asked.text("city", 100),
                asked.text("region", 10),
                asked.text("postal", 20),
                asked.text("country", 2),
                asked.line("phone", 40),
                asked.line("email", 200),
                asked.line("licence", 60),
                asked.line("gstNumber", 40),
                asked.line("qstNumber", 40),
                asked.yes("smallSupplier"),
                asked.yes("carryOpenSeason"),
                asked.whole("invoiceTermsDays", 0, 365),
                asked.oneOf("theme", Set.of("system", "day", "night")),
                asked.value("visitMinutesAtMost") == null
                        ? null
                        : asked.whole(
                                "visitMinutesAtMost", BusinessProfile.LEAST_VISIT, BusinessProfile.LONGEST_VISIT));
    }

    private BusinessDocument document() {
        Business business = businesses.current();
        BusinessProfile profile = businesses.profile();
        return new BusinessDocument(
                business.slug(),
                business.name(),
                business.language(),
                business.place(),
                business.zone().getId(),
                business.currency().getCurrencyCode(),
                business.openedOn(),
                profile.facts(),
                profile.version());
    }
}
