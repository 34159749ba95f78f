package changeover.web.office;

import changeover.billing.payments.Deposits;
import changeover.billing.payments.NewDeposit;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.customers.HomeParts;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
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

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance newdeposit(
                Frame frame, UUID id, String name, List<Choice> homes, List<Choice> ways, Said form);

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
                            null,
                            null,
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
        List<Choice> places = homes.all(parts.homesOf(customer, today.day())).stream()
                .map(home -> new Choice(home.id().toString(), home.line()))
                .toList();
        return Pages.newdeposit(frame, customer, found.name(), places, DepositPages.ways(frame), form);
    }

    private Customer found(UUID customer) {
        return customers.get(customer).orElseThrow(NotFoundException::new);
    }
}
