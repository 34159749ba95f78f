package changeover.web.api;

import changeover.billing.collection.Collecting;
import changeover.billing.collection.Mandates;
import changeover.contracts.customers.Customers;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What is collected from the accounts of those who agreed to it. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office"})
public class CollectionApi {

    /** @param reference what stands on the signed paper */
    public record MandateDocument(UUID id, UUID customer, LocalDate signedOn, String reference) {}

    /**
     * A document to be collected.
     *
     * @param instalment which of how many, null for another document
     * @param cameBack whether one for it came back before
     * @param before how often it was collected before; said back when it was collected
     */
    public record DueDocument(
            UUID invoice,
            String number,
            UUID customer,
            LocalDate due,
            Amount open,
            String reference,
            @Nullable Integer instalment,
            @Nullable Integer instalments,
            boolean cameBack,
            int before) {}

    public record CollectedDocument(int collected) {}

    @Inject
    Mandates mandates;

    @Inject
    Collecting collecting;

    @Inject
    Customers customers;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** The mandate that stands; none where nobody signed one. */
    @GET
    @Path("customers/{id}/mandate")
    @Transactional
    public List<MandateDocument> of(@PathParam("id") UUID id) {
        var _ = customers.get(id).orElseThrow(NotFoundException::new);
        return mandates.of(id).stream().map(CollectionApi::document).toList();
    }

    /** {@code signedOn} and {@code reference}; a new one takes the place of the one that stood. */
    @POST
    @Path("customers/{id}/mandate")
    public Response sign(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "mandate " + id + body, () -> {
            var _ = customers.get(id).orElseThrow(NotFoundException::new);
            Asked asked = Asked.of(body, json);
            LocalDate signedOn = asked.day("signedOn");
            String reference = asked.text("reference", 60);
            asked.nothingElse().understood();
            mandates.sign(id, signedOn, reference);
            return Once.Answer.made(
                    "/api/v1/" + slug + "/customers/" + id + "/mandate",
                    document(mandates.of(id).orElseThrow()));
        });
    }

    /** It was taken back. */
    @POST
    @Path("customers/{id}/mandate/end")
    public Response end(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "mandate end " + id + body, () -> {
            var _ = customers.get(id).orElseThrow(NotFoundException::new);
            Asked.of(body, json).nothingElse().understood();
            mandates.of(id).ifPresent(one -> mandates.end(one.id()));
            return Once.Answer.done(of(id));
        });
    }

    /** What is due up to and with a day, which is today when none is named. */
    @GET
    @Path("collection")
    @Transactional
    public List<DueDocument> due(@Nullable @QueryParam("until") String until) {
        return collecting.until(until == null ? today.day() : AskedInQuery.day("until", until)).stream()
                .map(CollectionApi::document)
                .toList();
    }

    /**
     * These were collected: {@code invoices} (objects with {@code id}, and {@code amount} and {@code before} as the list said them),
     * optionally {@code day} (today); a payment for each. An amount that the list does not draw now is refused.
     */
    @POST
    @Path("collection")
    public Response collected(@HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "collection " + body, () -> {
            Asked asked = Asked.of(body, json);
            Map<UUID, Collecting.Drawn> drawn = new LinkedHashMap<>();
            for (Asked one : asked.each("invoices")) {
                drawn.put(
                        one.id("id"),
                        new Collecting.Drawn(
                                one.money("amount", businesses.current().currency()), one.whole("before", 0, 100_000)));
                one.nothingElse();
            }
            LocalDate day = asked.value("day") == null ? today.day() : asked.day("day");
            asked.nothingElse().understood();
            return Once.Answer.done(new CollectedDocument(collecting.collectedAsListed(drawn, day)));
        });
    }

    private static MandateDocument document(Mandates.Mandate one) {
        return new MandateDocument(one.id(), one.customerId(), one.signedOn(), one.reference());
    }

    private static DueDocument document(Collecting.Due one) {
        return new DueDocument(
                one.item().id(),
                one.item().label(),
                one.item().customerId(),
                one.item().dueDay(),
                Amount.of(one.item().open()),
                one.mandate(),
                one.instalment(),
                one.instalments(),
                one.cameBack(),
                one.debits());
    }
}
