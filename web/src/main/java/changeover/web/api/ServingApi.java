package changeover.web.api;

import changeover.billing.serving.ServingRules;
import changeover.billing.serving.Servings;
import changeover.billing.serving.Word;
import changeover.contracts.customers.Customers;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Refusal;
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
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/** What is done at homes whose payer is late: the business's rules, and words about one customer that outrank them. */
@Path("/api/v1/{slug}")
@RolesAllowed({"owner", "office"})
public class ServingApi {

    /**
     * A rule as the API says it.
     *
     * @param what ask or not
     * @param least late in all, or more
     */
    public record RuleDocument(String what, int daysLate, Amount least) {}

    /** @param what serve, ask, not, or rule: by the rules again */
    public record WordDocument(LocalDate day, String what, String why) {}

    @Inject
    Servings servings;

    @Inject
    Customers customers;

    @Inject
    Businesses businesses;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    @GET
    @Path("serving")
    @Transactional
    public List<RuleDocument> rules() {
        return servings.rules().rules().stream()
                .map(rule -> new RuleDocument(rule.what().code(), rule.daysLate(), Amount.of(rule.least())))
                .toList();
    }

    /** {@code rules}: objects with {@code what} (ask, not), {@code daysLate} and optionally {@code least}; they replace those that held. */
    @POST
    @Path("serving")
    @RolesAllowed("owner")
    public Response rule(@HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "serving " + body, () -> {
            Asked asked = Asked.of(body, json);
            Currency currency = businesses.current().currency();
            List<ServingRules.Rule> rules = new ArrayList<>();
            for (Asked one : asked.each("rules")) {
                Word what = Word.of(one.oneOf("what", Set.of("ask", "not"))).orElse(Word.ASK);
                int days = one.whole("daysLate", 1, 3650);
                Money least = one.value("least") == null ? Money.zero(currency) : one.money("least", currency);
                if (rules.stream().anyMatch(rule -> rule.what() == what)) {
                    one.refuse(Refusal.of("typed.choose").at(one.path() + "what"));
                }
                one.nothingElse();
                rules.add(new ServingRules.Rule(what, days, least));
            }
            if (asked.value("rules") == null) {
                asked.refuse(Refusal.of("typed.missing").at("rules"));
            }
            asked.nothingElse().understood();
            servings.rule(new ServingRules(rules));
            return Once.Answer.done(rules());
        });
    }

    /** What was said of a customer, the newest first. */
    @GET
    @Path("customers/{id}/serving")
    @Transactional
    public List<WordDocument> of(@PathParam("id") UUID id) {
        var _ = customers.get(id).orElseThrow(NotFoundException::new);
        return servings.of(id).stream()
                .map(said -> new WordDocument(said.day(), said.what(), said.why()))
                .toList();
    }

    /** {@code what} (serve, ask, not; rule goes back to the rules) and {@code why}. */
    @POST
    @Path("customers/{id}/serving")
    public Response say(@PathParam("id") UUID id, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "serving " + id + body, () -> {
            var _ = customers.get(id).orElseThrow(NotFoundException::new);
            Asked asked = Asked.of(body, json);
            String what = asked.oneOf("what", Set.of("serve", "ask", "not", "rule"));
            String why = asked.text("why", 300);
            asked.nothingElse().understood();
            servings.say(id, Word.of(what).orElse(null), why);
            return Once.Answer.done(of(id));
        });
    }
}
