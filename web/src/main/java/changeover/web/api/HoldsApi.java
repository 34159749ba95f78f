package changeover.web.api;

import changeover.billing.reminders.Hold;
import changeover.billing.reminders.Holds;
import changeover.contracts.customers.Customers;
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
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Who is not reminded, of what, and why. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office"})
public class HoldsApi {

    /**
     * A hold as the API says it.
     *
     * @param invoice null for everything of the customer
     * @param kind dispute, promise or hold
     * @param until last day, in; null until somebody ends it
     */
    public record HoldDocument(
            UUID id,
            UUID customer,
            @Nullable UUID invoice,
            @Nullable String number,
            LocalDate day,
            String kind,
            String why,
            @Nullable LocalDate until,
            @Nullable LocalDate ended) {}

    @Inject
    Holds holds;

    @Inject
    Customers customers;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** The newest first, ended ones too. */
    @GET
    @Path("customers/{id}/holds")
    @Transactional
    public List<HoldDocument> of(@PathParam("id") UUID id) {
        var _ = customers.get(id).orElseThrow(NotFoundException::new);
        return holds.of(id).stream().map(HoldsApi::document).toList();
    }

    /** {@code kind} (dispute, promise, hold) and {@code why}, optionally {@code invoice} and {@code until}. */
    @POST
    @Path("customers/{id}/holds")
    public Response hold(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "holds " + id + body, () -> {
            var _ = customers.get(id).orElseThrow(NotFoundException::new);
            Asked asked = Asked.of(body, json);
            @Nullable UUID invoice = asked.idOrNone("invoice");
            String kind = asked.oneOf(
                    "kind", Arrays.stream(Hold.Why.values()).map(Hold.Why::code).collect(Collectors.toSet()));
            String why = asked.text("why", 300);
            @Nullable LocalDate until = asked.dayOrNone("until");
            asked.nothingElse().understood();
            UUID made = holds.hold(id, invoice, Hold.Why.of(kind).orElseThrow(), why, until);
            return Once.Answer.made(
                    "/api/v1/" + slug + "/customers/" + id + "/holds",
                    document(holds.one(made).orElseThrow()));
        });
    }

    /** It holds no longer. */
    @POST
    @Path("holds/{id}/end")
    public Response end(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "hold end " + id + body, () -> {
            var _ = holds.one(id).orElseThrow(NotFoundException::new);
            Asked.of(body, json).nothingElse().understood();
            holds.end(id);
            return Once.Answer.done(document(holds.one(id).orElseThrow()));
        });
    }

    private static HoldDocument document(Hold hold) {
        return new HoldDocument(
                hold.id(),
                hold.customerId(),
                hold.invoiceId(),
                hold.label(),
                hold.day(),
                hold.kind().code(),
                hold.why(),
                hold.until(),
                hold.ended());
    }
}
