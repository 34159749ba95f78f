package changeover.web.api;

import changeover.billing.payments.Deposit;
import changeover.billing.payments.Deposits;
import changeover.billing.payments.NewDeposit;
import changeover.billing.payments.Way;
import changeover.contracts.customers.HomeParts;
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
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Money taken before the work: kept for the customer until it is applied to an invoice or given back. */
@Path("/api/v1/{slug}/deposits")
@RolesAllowed({"owner", "office"})
public class DepositsApi {

    /**
     * A deposit as the API says it.
     *
     * @param number of its receipt
     * @param agreement which it was taken for, where it was for one
     * @param applied to invoices
     * @param left still kept
     */
    public record DepositDocument(
            UUID id,
            long number,
            UUID customer,
            UUID home,
            @Nullable UUID agreement,
            @Nullable UUID call,
            LocalDate day,
            String way,
            String words,
            Amount amount,
            Amount applied,
            Amount returned,
            Amount left) {}

    @Inject
    Deposits deposits;

    @Inject
    HomeParts parts;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** All of them, the oldest first. */
    @GET
    @Transactional
    public List<DepositDocument> all() {
        return deposits.all().stream().map(DepositsApi::document).toList();
    }

    /**
     * Keeps a deposit: {@code customer, home, amount, way, words}, optionally {@code day} (today), {@code reference}, and the
     * {@code agreement} or {@code call} of that home which it is for.
     */
    @POST
    public Response take(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "deposits " + body, () -> {
            Asked asked = Asked.of(body, json);
            UUID customer = asked.id("customer");
            UUID home = asked.id("home");
            UUID agreement = asked.idOrNone("agreement");
            UUID call = asked.idOrNone("call");
            Money amount = asked.money("amount", businesses.current().currency());
            Way way = way(asked);
            String words = asked.text("words", 200);
            LocalDate day = day(asked);
            String reference = asked.line("reference", 140);
            asked.nothingElse().understood();
            if (!parts.homesOf(customer, today.day()).contains(home)) {
                throw new NotFoundException();
            }
            return made(
                    slug,
                    deposits.take(new NewDeposit(customer, home, agreement, call, day, way, amount, reference, words)));
        });
    }

    /** Pays an invoice of the same customer: {@code invoice}, optionally {@code amount} (as much as fits) and {@code day}. */
    @POST
    @Path("{id}/applications")
    public Response apply(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "deposit applications " + id + body, () -> {
            mine(id);
            Asked asked = Asked.of(body, json);
            UUID invoice = asked.id("invoice");
            @Nullable
            Money amount = asked.value("amount") == null
                    ? null
                    : asked.money("amount", businesses.current().currency());
            LocalDate day = day(asked);
            asked.nothingElse().understood();
            deposits.apply(id, invoice, day, amount);
            return made(slug, id);
        });
    }

    /** Gives a part back: {@code amount, way}, optionally {@code day} (today) and {@code reference}. */
    @POST
    @Path("{id}/returns")
    public Response giveBack(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "deposit returns " + id + body, () -> {
            mine(id);
            Asked asked = Asked.of(body, json);
            Money amount = asked.money("amount", businesses.current().currency());
            Way way = way(asked);
            LocalDate day = day(asked);
            String reference = asked.line("reference", 140);
            asked.nothingElse().understood();
            deposits.giveBack(id, day, way, amount, reference);
            return made(slug, id);
        });
    }

    private static Way way(Asked asked) {
        String way = asked.oneOf("way", Way.codes());
        return Way.of(way.isEmpty() ? "other" : way);
    }

    private LocalDate day(Asked asked) {
        LocalDate day = asked.dayOrNone("day");
        return day == null ? today.day() : day;
    }

    private Deposit mine(UUID id) {
        return deposits.of(id).orElseThrow(NotFoundException::new);
    }

    private Once.Answer made(String slug, UUID id) {
        return Once.Answer.made("/api/v1/" + slug + "/deposits", document(mine(id)));
    }

    private static DepositDocument document(Deposit one) {
        return new DepositDocument(
                one.id(),
                one.number(),
                one.customerId(),
                one.homeId(),
                one.agreementId(),
                one.callId(),
                one.day(),
                one.way().code(),
                one.words(),
                Amount.of(one.amount()),
                Amount.of(one.applied()),
                Amount.of(one.back()),
                Amount.of(one.left()));
    }
}
