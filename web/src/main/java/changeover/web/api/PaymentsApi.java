package changeover.web.api;

import changeover.billing.payments.NewPayment;
import changeover.billing.payments.Owed;
import changeover.billing.payments.OwedBy;
import changeover.billing.payments.Payment;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Returns;
import changeover.billing.payments.Undoing;
import changeover.billing.payments.Way;
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
import java.util.Currency;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Payments as a person noted them, and what each customer still owes. */
@Path("/api/v1/{slug}/payments")
@RolesAllowed({"owner", "office"})
public class PaymentsApi {

    /** A payment, or a refund, as the API says it, and what its customer owes after it. */
    public record PaymentDocument(
            UUID id,
            String kind,
            UUID customer,
            LocalDate day,
            String way,
            Amount amount,
            @Nullable String reference,
            @Nullable LocalDate undone,
            Amount owing,
            Amount credit) {}

    @Inject
    Payments payments;

    @Inject
    Returns returns;

    @Inject
    Owed owed;

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

    @GET
    @Transactional
    public List<PaymentDocument> of(@QueryParam("customer") UUID customer) {
        if (customer == null || customers.get(customer).isEmpty()) {
            throw new NotFoundException();
        }
        return payments.ofCustomer(customer).stream().map(this::document).toList();
    }

    @GET
    @Path("{id}")
    @Transactional
    public PaymentDocument one(@PathParam("id") UUID id) {
        return document(payments.of(id).orElseThrow(NotFoundException::new));
    }

    /**
     * Takes a payment: {@code customer}, {@code amount}, {@code way}, optionally {@code day}, {@code reference},
     * {@code note} and {@code parts} (invoice, amount); without parts the oldest open documents are paid first. A part that
     * is more than its document has open, or parts that are more than the payment, are refused.
     */
    @POST
    public Response take(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "payments " + body, () -> {
            Asked asked = Asked.of(body, json);
            Currency currency = businesses.current().currency();
            UUID customer = asked.id("customer");
            var amount = asked.money("amount", currency);
            String way = asked.oneOf("way", Way.codes());
            LocalDate day = asked.dayOrNone("day");
            List<NewPayment.Part> parts = asked.each("parts").stream()
                    .map(part -> {
                        var one = new NewPayment.Part(part.id("invoice"), part.money("amount", currency));
                        part.nothingElse();
                        return one;
                    })
                    .toList();
            String reference = asked.line("reference", 140);
            String note = asked.line("note", 500);
            asked.nothingElse().understood();
            if (customers.get(customer).isEmpty()) {
                throw new NotFoundException();
            }
            UUID id = payments.takeAsNamed(new NewPayment(
                    customer, day == null ? today.day() : day, Way.of(way), amount, reference, note, parts));
            return Once.Answer.made(
                    "/api/v1/" + slug + "/payments/" + id,
                    document(payments.of(id).orElseThrow()));
        });
    }

    /**
     * A payment that did not hold: {@code how} (bounced, mistake) and {@code why}, optionally {@code day}. For one that the
     * bank returned the place's fee is drafted.
     */
    @POST
    @Path("{id}/undoing")
    public Response undo(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "undoing " + id + body, () -> {
            var _ = payments.of(id).orElseThrow(NotFoundException::new);
            Asked asked = Asked.of(body, json);
            String how = asked.oneOf("how", Set.of("bounced", "mistake"));
            String why = asked.text("why", 500);
            LocalDate day = asked.dayOrNone("day");
            asked.nothingElse().understood();
            LocalDate on = day == null ? today.day() : day;
            if (how.equals("bounced")) {
                returns.back(id, on, why);
            } else {
                payments.undo(id, Undoing.How.MISTAKE, on, why);
            }
            return Once.Answer.done(document(payments.of(id).orElseThrow()));
        });
    }

    private PaymentDocument document(Payment payment) {
        OwedBy standing = owed.of(payment.customerId(), today.day());
        return new PaymentDocument(
                payment.id(),
                payment.isRefund() ? "refund" : "payment",
                payment.customerId(),
                payment.day(),
                payment.way().code(),
                Amount.of(payment.amount()),
                payment.reference(),
                payments.undoing(payment.id()).map(Undoing::day).orElse(null),
                Amount.of(standing.open()),
                Amount.of(standing.credit()));
    }
}
