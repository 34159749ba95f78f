package changeover.web.api;

import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.billing.ledger.Period;
import changeover.billing.statements.AccountStatements;
import changeover.contracts.customers.Customers;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.tenants.Today;
import changeover.web.session.Once;
import changeover.web.session.PaperAnswer;
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
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Statements of a period: whom a batch would go to, sending it, and those that a customer was sent. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office"})
public class StatementsApi {

    /** @param closing what they owe at the end of the period, below nought for a credit */
    public record WhomDocument(UUID customer, Amount closing) {}

    public record SentDocument(int statements) {}

    public record StatementDocument(UUID id, LocalDate from, LocalDate until, LocalDate day, Amount closing) {}

    @Inject
    AccountStatements statements;

    @Inject
    Customers customers;

    @Inject
    CurrentTenant current;

    @Inject
    DocumentsToMake papers;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** Whom a batch would go to; without days the last quarter that is over. */
    @GET
    @Path("statements")
    @Transactional
    public List<WhomDocument> whom(
            @Nullable @QueryParam("from") String from, @Nullable @QueryParam("until") String until) {
        Period period = AskedInQuery.period(from, until, today.day());
        return statements.whom(period.from(), period.until()).entrySet().stream()
                .map(one -> new WhomDocument(one.getKey(), Amount.of(one.getValue())))
                .toList();
    }

    /**
     * Makes and sends them: {@code from}, {@code until}, optionally {@code customers} (objects with {@code id}); without them to
     * all whom the list names. One that was made today already is left as it is.
     */
    @POST
    @Path("statements")
    public Response send(@HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "statements " + body, () -> {
            Asked asked = Asked.of(body, json);
            LocalDate from = asked.day("from");
            LocalDate until = asked.day("until");
            Set<UUID> whom = asked.each("customers").stream()
                    .map(one -> {
                        UUID id = one.id("id");
                        one.nothingElse();
                        return id;
                    })
                    .collect(Collectors.toSet());
            asked.nothingElse().understood();
            return Once.Answer.done(new SentDocument(statements.send(from, until, whom)));
        });
    }

    /** What a customer was sent, the newest first. */
    @GET
    @Path("customers/{id}/statements")
    @Transactional
    public List<StatementDocument> of(@PathParam("id") UUID id) {
        var _ = customers.get(id).orElseThrow(NotFoundException::new);
        return statements.of(id).stream()
                .map(one ->
                        new StatementDocument(one.id(), one.from(), one.until(), one.day(), Amount.of(one.closing())))
                .toList();
    }

    /** The paper, made now if it was not yet; always the same bytes. */
    @GET
    @Path("statements/{id}.pdf")
    @Produces("application/pdf")
    public Response pdf(@PathParam("id") UUID id) {
        boolean ours = current.run(current.id(), current.person(), () -> statements.customerOf(id) != null);
        if (!ours) {
            throw new NotFoundException();
        }
        return PaperAnswer.of(
                papers.newest(current.id(), PaperKind.STATEMENT, id).orElseThrow(NotFoundException::new));
    }
}
