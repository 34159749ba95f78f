package changeover.web.api;

import changeover.billing.ledger.Period;
import changeover.billing.writeoffs.WriteOff;
import changeover.billing.writeoffs.WriteOffs;
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

/** Debts that are given up, with their part of the taxes, and opened again. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office"})
public class WriteOffsApi {

    /**
     * A movement as the API says it.
     *
     * @param amount taxes in; below nought for what was taken back
     * @param tax its part of the taxes
     * @param lost the rest
     * @param because paid or credited, where no person took it back
     */
    public record WriteOffDocument(
            UUID id,
            UUID invoice,
            String number,
            UUID customer,
            LocalDate day,
            Amount amount,
            Amount tax,
            Amount lost,
            @Nullable String why,
            @Nullable String because) {}

    @Inject
    WriteOffs writeOffs;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** In a period; without days the last quarter that is over. */
    @GET
    @Path("write-offs")
    @Transactional
    public List<WriteOffDocument> between(
            @Nullable @QueryParam("from") String from, @Nullable @QueryParam("until") String until) {
        Period period = AskedInQuery.period(from, until, today.day());
        return writeOffs.between(period.from(), period.until()).stream()
                .map(WriteOffsApi::document)
                .toList();
    }

    /** Gives a debt up: {@code why}, optionally {@code amount} with its taxes (all that is open) and {@code day} (today). */
    @POST
    @Path("invoices/{id}/write-offs")
    public Response giveUp(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "write-offs " + id + body, () -> {
            if (!writeOffs.mayBeGivenUp(id)) {
                throw new NotFoundException();
            }
            Asked asked = Asked.of(body, json);
            @Nullable
            Money amount = asked.value("amount") == null
                    ? null
                    : asked.money("amount", businesses.current().currency());
            LocalDate day = asked.value("day") == null ? today.day() : asked.day("day");
            String why = asked.text("why", 500);
            asked.nothingElse().understood();
            UUID made = writeOffs.giveUp(id, day, amount, why);
            return Once.Answer.made(
                    "/api/v1/" + slug + "/write-offs",
                    document(writeOffs.of(made).orElseThrow()));
        });
    }

    /** It was given up too soon: {@code why}, optionally {@code day} (today). What still stands of it is open again. */
    @POST
    @Path("write-offs/{id}/undoing")
    public Response undo(
            @PathParam("slug") String slug,
            @PathParam("id") UUID id,
            @HeaderParam("Operation-Id") String operation,
            String body) {
        return once.answer(operation, "write-off undoing " + id + body, () -> {
            WriteOff given = writeOffs.of(id).orElseThrow(NotFoundException::new);
            Asked asked = Asked.of(body, json);
            LocalDate day = asked.value("day") == null ? today.day() : asked.day("day");
            String why = asked.text("why", 500);
            asked.nothingElse().understood();
            writeOffs.takeBack(id, day, why);
            return Once.Answer.made(
                    "/api/v1/" + slug + "/write-offs",
                    document(writeOffs.ofInvoice(given.invoiceId()).getLast()));
        });
    }

    private static WriteOffDocument document(WriteOff one) {
        WriteOff.Because because = one.because();
        return new WriteOffDocument(
                one.id(),
                one.invoiceId(),
                one.label(),
                one.customerId(),
                one.day(),
                Amount.of(one.amount()),
                Amount.of(one.tax()),
                Amount.of(one.lost()),
                one.why(),
                because == null
                        ? null
                        : switch (because) {
                            case PAID -> "paid";
                            case CREDITED -> "credited";
                        });
    }
}
