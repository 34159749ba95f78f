package changeover.web.api;

import changeover.billing.payments.NewRefund;
import changeover.billing.payments.Payment;
import changeover.billing.payments.Payments;
import changeover.billing.payments.Refunds;
import changeover.billing.payments.Undoing;
import changeover.billing.payments.Way;
import changeover.contracts.customers.Customers;
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
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Money given back to customers out of what is kept for them. */
@Path("/api/v1/{slug}/refunds")
@RolesAllowed({"owner", "office"})
public class RefundsApi {

    /** A refund as the API says it, and what is still kept for its customer. */
    public record RefundDocument(
            UUID id,
            UUID customer,
            LocalDate day,
            String way,
            Amount amount,
            @Nullable String reference,
            @Nullable LocalDate undone,
            Amount kept) {}

    @Inject
    Payments payments;

    @Inject
    Refunds refunds;

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
    public List<RefundDocument> of(@QueryParam("customer") UUID customer) {
        if (customer == null || customers.get(customer).isEmpty()) {
            throw new NotFoundException();
        }
        Money most = refunds.most(customer, today.day());
        return payments.ofCustomer(customer).stream()
                .filter(Payment::isRefund)
                .map(refund -> document(refund, most))
                .toList();
    }

    /** Gives money back: {@code customer}, {@code amount}, {@code way}, optionally {@code day, reference, note}. */
    @POST
    public Response give(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "refunds " + body, () -> {
            Asked asked = Asked.of(body, json);
            UUID customer = asked.id("customer");
            var amount = asked.money("amount", businesses.current().currency());
            String way = asked.oneOf("way", Way.codes());
            LocalDate day = asked.dayOrNone("day");
            String reference = asked.line("reference", 140);
            String note = asked.line("note", 500);
            asked.nothingElse().understood();
            if (customers.get(customer).isEmpty()) {
                throw new NotFoundException();
            }
            UUID id = refunds.give(
                    new NewRefund(customer, day == null ? today.day() : day, Way.of(way), amount, reference, note));
            return Once.Answer.made(
                    "/api/v1/" + slug + "/payments/" + id,
                    document(payments.of(id).orElseThrow(), refunds.most(customer, today.day())));
        });
    }

    private RefundDocument document(Payment refund, Money most) {
        return new RefundDocument(
                refund.id(),
                refund.customerId(),
                refund.day(),
                refund.way().code(),
                Amount.of(refund.tendered()),
                refund.reference(),
                payments.undoing(refund.id()).map(Undoing::day).orElse(null),
                Amount.of(most));
    }
}
