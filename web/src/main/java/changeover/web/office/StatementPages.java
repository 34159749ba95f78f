package changeover.web.office;

import changeover.billing.documents.DocumentsToMake;
import changeover.billing.documents.PaperKind;
import changeover.billing.statements.AccountStatements;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.CurrentTenant;
import changeover.contracts.words.Refusal;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.PaperAnswer;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Statements of a period: for a month in one go, or for one customer; each kept as it was made. */
@Path("/{slug}/money")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class StatementPages {

    public record Whom(UUID customer, String name, String closing) {}

    public record Made(UUID id, String first, String last, String day, String closing) {}

    public record View(String from, String until, List<Whom> whom) {}

    public record One(UUID customer, String name, List<Made> made) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance statements(Frame frame, View view, Said form);

        static native TemplateInstance statementsof(Frame frame, One view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    CurrentTenant current;

    @Inject
    AccountStatements statements;

    @Inject
    DocumentsToMake papers;

    @Inject
    Customers customers;

    /** The month that is over, unless other days are asked for. */
    @GET
    @Path("statements")
    @Transactional
    public TemplateInstance batch(
            @QueryParam("from") @Nullable String from, @QueryParam("until") @Nullable String until) {
        LocalDate last = frames.of(Tab.MONEY).today().withDayOfMonth(1).minusDays(1);
        LocalDate end = day(until, last);
        LocalDate begin = day(from, end.withDayOfMonth(1));
        return batch(begin, end.isBefore(begin) ? begin : end, Said.blank());
    }

    @POST
    @Path("statements")
    public Response send(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    LocalDate from = typed.day("from");
                    LocalDate until = typed.day("until");
                    typed.understood();
                    if (until.isBefore(from)) {
                        throw Refusal.of("period.backwards").at("until").thrown();
                    }
                    Set<String> chosen = Set.copyOf(typed.each("customer"));
                    Set<UUID> whom = statements.whom(from, until).keySet().stream()
                            .filter(id -> chosen.contains(id.toString()))
                            .collect(Collectors.toSet());
                    if (whom.isEmpty()) {
                        throw Refusal.of("statement.choose").thrown();
                    }
                    int made = statements.send(from, until, whom);
                    return SaidOnce.at(
                            "/" + slug + "/money/statements", made > 0 ? "statements-sent" : "statement-none");
                },
                refusals -> {
                    LocalDate today = frames.of(Tab.MONEY).today();
                    LocalDate until = day(typed.line("until", 20), today);
                    LocalDate from = day(typed.line("from", 20), until);
                    return batch(
                            from.isBefore(until) ? from : until, until, Said.again(typed, refusals, frames.locale()));
                });
    }

    @GET
    @Path("customers/{customer}/statements")
    @Transactional
    public TemplateInstance of(@PathParam("customer") UUID customer) {
        LocalDate last = frames.of(Tab.MONEY).today().withDayOfMonth(1).minusDays(1);
        return of(customer, Said.filled(Map.of("from", last.withDayOfMonth(1).toString(), "until", last.toString())));
    }

    @POST
    @Path("customers/{customer}/statements")
    public Response send(
            @PathParam("slug") String slug,
            @PathParam("customer") UUID customer,
            MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = customers.get(customer).orElseThrow(NotFoundException::new);
                    LocalDate from = typed.day("from");
                    LocalDate until = typed.day("until");
                    typed.understood();
                    boolean made = statements.send(from, until, Set.of(customer)) > 0;
                    return SaidOnce.at(
                            "/" + slug + "/money/customers/" + customer + "/statements",
                            made ? "statements-sent" : "statement-none");
                },
                refusals -> of(customer, Said.again(typed, refusals, frames.locale())));
    }

    @GET
    @Path("statements/{statement}/pdf")
    @Produces("application/pdf")
    public Response pdf(@PathParam("statement") UUID statement) {
        boolean ours = current.run(current.id(), current.person(), () -> statements.customerOf(statement) != null);
        if (!ours) {
            throw new NotFoundException();
        }
        return PaperAnswer.of(
                papers.newest(current.id(), PaperKind.STATEMENT, statement).orElseThrow(NotFoundException::new));
    }

    private TemplateInstance batch(LocalDate from, LocalDate until, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        Map<UUID, Money> closings = statements.whom(from, until);
        List<Whom> whom = new ArrayList<>();
        for (Customer one : customers.all(closings.keySet().stream().toList())) {
            Money closing = closings.get(one.id());
            whom.add(new Whom(one.id(), one.name(), closing == null ? "" : closing.format(frame.locale())));
        }
        return Pages.statements(frame, new View(from.toString(), until.toString(), whom), form);
    }

    private TemplateInstance of(UUID id, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        Customer customer = customers.get(id).orElseThrow(NotFoundException::new);
        List<Made> made = statements.of(id).stream()
                .map(one -> new Made(
                        one.id(),
                        frame.inWords(one.from()),
                        frame.inWords(one.until()),
                        frame.brief(one.day()),
                        one.closing().format(frame.locale())))
                .toList();
        return Pages.statementsof(frame, new One(id, customer.name(), made), form);
    }

    /** A day that does not read is the usual one. */
    private static LocalDate day(@Nullable String text, LocalDate usual) {
        try {
            return text == null || text.isBlank() ? usual : Typed.readDay(text);
        } catch (DateTimeException notADay) {
            return usual;
        }
    }
}
