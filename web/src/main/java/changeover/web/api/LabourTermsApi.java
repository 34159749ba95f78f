package changeover.web.api;

import changeover.billing.pricing.LabourTerms;
import changeover.billing.pricing.Prices;
import changeover.billing.pricing.PricingRules;
import changeover.contracts.tenants.Today;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/** By which step minutes are billed, and the least of a visit that no plan promised, each from a day on. */
@Path("/api/v1/{slug}/prices/labour-terms")
@RolesAllowed({"owner", "office"})
public class LabourTermsApi {

    /** Both in minutes. */
    public record LabourTermsDocument(LocalDate from, int step, int minimum) {}

    @Inject
    Prices prices;

    @Inject
    PricingRules rules;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** The oldest first; none until the business writes its own. */
    @GET
    @Transactional
    public List<LabourTermsDocument> all() {
        return prices.book().terms().stream()
                .sorted(Comparator.comparing(LabourTerms::from))
                .map(LabourTermsApi::document)
                .toList();
    }

    /** From a day on: {@code step} (6, 10, 15, 30 or 60), {@code minimum}, optionally {@code from} (today). */
    @POST
    @RolesAllowed("owner")
    public Response set(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "labour terms " + body, () -> {
            Asked asked = Asked.of(body, json);
            var terms = new LabourTerms(
                    asked.value("from") == null ? today.day() : asked.day("from"),
                    asked.whole("step", 1, 60),
                    asked.whole("minimum", 0, LabourTerms.LARGEST_MINIMUM));
            asked.nothingElse().understood();
            rules.set(terms);
            return Once.Answer.made("/api/v1/" + slug + "/prices/labour-terms", document(terms));
        });
    }

    private static LabourTermsDocument document(LabourTerms terms) {
        return new LabourTermsDocument(terms.from(), terms.step(), terms.minimum());
    }
}
