package changeover.web.office;

import changeover.billing.payments.DepositWork;
import changeover.billing.payments.Deposits;
import changeover.billing.payments.NewDeposit;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
import changeover.web.office.DepositPages.Choice;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** A customer pays a deposit for work in one of their homes. */
@Path("/{slug}/money/customers/{customer}/deposits")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class NewDepositPages {

    /** @param homes the customer pays for; agreements and calls are of these */
    public record Choices(List<Choice> homes, List<Choice> agreements, List<Choice> calls, List<Choice> ways) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance newdeposit(Frame frame, UUID id, String name, Choices choices, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Today today;

    @Inject
    Deposits deposits;

    @Inject
    DepositWork work;

    @Inject
    Customers customers;

    @Inject
    HomeParts parts;

    @Inject
    Homes homes;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance form(@PathParam("customer") UUID customer) {
        return taking(customer, Said.filled(Map.of("day", today.day().toString(), "way", "card")));
    }

    @POST
    public Response take(
            @PathParam("slug") String slug,
            @PathParam("customer") UUID customer,
            MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    found(customer);
                    UUID home = typed.id("home");
                    if (!parts.homesOf(customer, today.day()).contains(home)) {
                        throw new NotFoundException();
                    }
                    var taken = new NewDeposit(
                            customer,
                            home,
                            typed.idOrNone("agreement"),
                            typed.idOrNone("call"),
                            typed.day("day"),
                            DepositPages.way(typed),
                            typed.money("amount", businesses.current().currency()),
                            typed.line("reference", 140),
                            typed.text("words", 200));
                    typed.understood();
                    return SaidOnce.at("/" + slug + "/money/deposits/" + deposits.take(taken), "kept");
                },
                refusals -> taking(customer, Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance taking(UUID customer, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        Customer found = found(customer);
        return Pages.newdeposit(frame, customer, found.name(), choices(customer, frame), form);
    }

    private Choices choices(UUID customer, Frame frame) {
        List<UUID> theirs = parts.homesOf(customer, today.day());
        return new Choices(
                homes.all(theirs).stream()
                        .map(home -> new Choice(home.id().toString(), home.line()))
                        .toList(),
                work.agreements(theirs, today.day()).stream()
                        .map(one -> new Choice(one.id().toString(), words(one, frame)))
                        .toList(),
                work.calls(theirs, today.day()).stream()
                        .map(one -> new Choice(one.id().toString(), words(one, frame)))
                        .toList(),
                DepositPages.ways(frame));
    }

    /** As it is chosen here and read on the deposit's page. */
    private static String words(DepositWork.OfAgreement one, Frame frame) {
        return new Wording("No. " + one.number(), "Nº " + one.number()).in(frame.locale()) + ", "
                + one.plan().in(frame.locale()) + ", " + one.street();
    }

    private static String words(DepositWork.OfCall one, Frame frame) {
        return frame.brief(one.day()) + ", " + one.trouble().in(frame.locale()) + ", " + one.street();
    }

    private Customer found(UUID customer) {
        return customers.get(customer).orElseThrow(NotFoundException::new);
    }
}
