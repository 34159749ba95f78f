package changeover.web.api;

import changeover.billing.fees.Fee;
import changeover.billing.fees.FeeKind;
import changeover.billing.fees.Fees;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
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
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** What is asked by place when a payment comes back or a reminder goes out, each with its source. */
@Path("/api/v1/{slug}/fees")
@RolesAllowed({"owner", "office"})
public class FeesApi {

    /**
     * A fee as the API says it.
     *
     * @param kind returned or reminder
     * @param amount before tax; nought asks nothing from then on
     */
    public record FeeDocument(UUID id, String kind, String region, LocalDate from, Amount amount, String source) {}

    @Inject
    Fees fees;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Transactional
    public List<FeeDocument> all() {
        return fees.all().stream().map(FeesApi::document).toList();
    }

    /** {@code kind, region, amount, source}, optionally {@code from} (today). */
    @POST
    @RolesAllowed("owner")
    public Response set(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "fees " + body, () -> {
            Asked asked = Asked.of(body, json);
            Set<String> kinds =
                    Arrays.stream(FeeKind.values()).map(FeeKind::code).collect(Collectors.toSet());
            String kind = asked.oneOf("kind", kinds);
            String region = asked.text("region", 10);
            LocalDate from = asked.value("from") == null ? today.day() : asked.day("from");
            Money amount = asked.money("amount", businesses.current().currency());
            String source = asked.text("source", 300);
            asked.nothingElse().understood();
            UUID id = fees.set(FeeKind.of(kind).orElseThrow(), region, from, amount, source);
            return Once.Answer.made(
                    "/api/v1/" + slug + "/fees",
                    fees.all().stream()
                            .filter(fee -> fee.id().equals(id))
                            .map(FeesApi::document)
                            .findFirst()
                            .orElseThrow());
        });
    }

    private static FeeDocument document(Fee fee) {
        return new FeeDocument(
                fee.id(), fee.kind().code(), fee.region(), fee.from(), Amount.of(fee.amount()), fee.source());
    }
}
