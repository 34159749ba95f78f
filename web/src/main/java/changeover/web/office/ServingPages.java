package changeover.web.office;

import changeover.billing.serving.ServingRules;
import changeover.billing.serving.Servings;
import changeover.billing.serving.Word;
import changeover.contracts.customers.Customer;
import changeover.contracts.customers.Customers;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.SaidOnce;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import changeover.web.session.Written;
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
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** What the crew does where something is unpaid: the owner's rules, and the office's word about one customer. */
@Path("/{slug}/money")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class ServingPages {

    public record Row(String day, String what, String why) {}

    public record View(UUID customer, String name, List<Row> rows) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance serving(Frame frame, Said form);

        static native TemplateInstance servingof(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Servings servings;

    @Inject
    Customers customers;

    @Inject
    Businesses businesses;

    @GET
    @Path("serving")
    @Transactional
    public TemplateInstance rules() {
        Map<String, String> known = new HashMap<>();
        for (ServingRules.Rule rule : servings.rules().rules()) {
            known.put(rule.what().code() + "-days", String.valueOf(rule.daysLate()));
            known.put(rule.what().code() + "-least", Written.of(rule.least(), frames.locale()));
        }
        return Pages.serving(frames.of(Tab.MONEY), Said.filled(known));
    }

    @POST
    @Path("serving")
    @RolesAllowed("owner")
    public Response rule(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Currency currency = businesses.current().currency();
                    List<ServingRules.Rule> rules = new ArrayList<>();
                    for (Word word : List.of(Word.ASK, Word.NOT)) {
                        if (typed.line(word.code() + "-days", 10) != null) {
                            int days = typed.whole(word.code() + "-days", 1, 3650);
                            boolean any = typed.line(word.code() + "-least", 20) == null;
                            rules.add(new ServingRules.Rule(
                                    word,
                                    days,
                                    any ? Money.zero(currency) : typed.money(word.code() + "-least", currency)));
                        }
                    }
                    typed.understood();
                    servings.rule(new ServingRules(rules));
                    return SaidOnce.at("/" + slug + "/money/serving", "kept");
                },
                refusals -> Pages.serving(frames.of(Tab.MONEY), Said.again(typed, refusals, frames.locale())));
    }

    @GET
    @Path("customers/{customer}/serving")
    @Transactional
    public TemplateInstance of(@PathParam("customer") UUID customer) {
        return page(customer, Said.filled(Map.of("what", "ask")));
    }

    @POST
    @Path("customers/{customer}/serving")
    public Response say(
            @PathParam("slug") String slug,
            @PathParam("customer") UUID customer,
            MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    var _ = customers.get(customer).orElseThrow(NotFoundException::new);
                    String what = typed.oneOf("what", Set.of("serve", "ask", "not", "rule"));
                    String why = typed.text("why", 300);
                    typed.understood();
                    servings.say(customer, Word.of(what).orElse(null), why);
                    return SaidOnce.at("/" + slug + "/money/customers/" + customer + "/serving", "kept");
                },
                refusals -> page(customer, Said.again(typed, refusals, frames.locale())));
    }

    private TemplateInstance page(UUID id, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        Customer customer = customers.get(id).orElseThrow(NotFoundException::new);
        List<Row> rows = servings.of(id).stream()
                .map(one -> new Row(frame.brief(one.day()), one.what(), one.why()))
                .toList();
        return Pages.servingof(frame, new View(id, customer.name(), rows), form);
    }
}
