package changeover.web.api;

import changeover.billing.pricing.MarkUp;
import changeover.billing.pricing.PricingRules;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import changeover.scheduling.stock.Parts;
import changeover.web.session.Once;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What a part's price is made of its cost: by the part, by its kind, or by what it costs, each from a day on. */
@Path("/api/v1/{slug}/prices/mark-ups")
@RolesAllowed({"owner", "office"})
public class MarkUpsApi {

    private static final BigDecimal MOST = BigDecimal.valueOf(2000);

    /**
     * A rule as the API says it.
     *
     * @param scope part, kind or cost
     * @param item the part's code or the kind's; empty for a rule by cost
     * @param costFrom for parts that cost at least this
     * @param percent on the cost; null where the rule ends
     * @param step what prices are rounded to
     */
    public record MarkUpDocument(
            String scope,
            String item,
            Amount costFrom,
            @Nullable String percent,
            Amount step,
            LocalDate from) {}

    @Inject
    PricingRules rules;

    @Inject
    Parts parts;

    @Inject
    OwnCatalogue trade;

    @Inject
    Businesses businesses;

    @Inject
    Today today;

    @Inject
    Once once;

    @Inject
    ObjectMapper json;

    /** Every rule, those that ended and those to come too. */
    @GET
    @Transactional
    public List<MarkUpDocument> all() {
        return rules.markUps().rules().stream().map(MarkUpsApi::document).toList();
    }

    /**
     * A part's or a kind's own: {@code scope} (part or kind), {@code item}, {@code step}, optionally {@code percent} (without it
     * the rule ends) and {@code from} (today).
     */
    @POST
    @RolesAllowed("owner")
    public Response set(@PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "mark-ups " + body, () -> {
            Asked asked = Asked.of(body, json);
            Currency currency = businesses.current().currency();
            String scope = asked.oneOf("scope", Set.of("part", "kind"));
            String item = asked.text("item", 60);
            if (!item.isEmpty() && !known(scope, item)) {
                asked.refuse(Refusal.of("mark-up.item").at("item"));
            }
            @Nullable
            BigDecimal percent =
                    asked.value("percent") == null ? null : asked.decimal("percent", BigDecimal.ZERO, MOST);
            Money step = step(asked, currency);
            LocalDate from = from(asked);
            asked.nothingElse().understood();
            var rule = new MarkUp(MarkUp.Scope.of(scope), item, Money.zero(currency), percent, step, from);
            rules.set(rule);
            return Once.Answer.made("/api/v1/" + slug + "/prices/mark-ups", document(rule));
        });
    }

    /**
     * By what a part costs, all together: {@code step}, {@code brackets} (objects with {@code costFrom} and {@code percent}, the
     * first from nought), optionally {@code from} (today).
     */
    @POST
    @Path("by-cost")
    @RolesAllowed("owner")
    public Response setByCost(
            @PathParam("slug") String slug, @HeaderParam("Operation-Id") String operation, String body) {
        return once.answer(operation, "mark-ups by cost " + body, () -> {
            Asked asked = Asked.of(body, json);
            Currency currency = businesses.current().currency();
            Money step = step(asked, currency);
            LocalDate from = from(asked);
            List<MarkUp> brackets = asked.each("brackets").stream()
                    .map(one -> {
                        Money cost = one.money("costFrom", currency);
                        BigDecimal percent = one.decimal("percent", BigDecimal.ZERO, MOST);
                        one.nothingElse();
                        return new MarkUp(MarkUp.Scope.COST, "", cost, percent, step, from);
                    })
                    .toList();
            if (brackets.isEmpty()) {
                asked.refuse(Refusal.of("typed.missing").at("brackets"));
            }
            asked.nothingElse().understood();
            rules.setByCost(brackets);
            return Once.Answer.made(
                    "/api/v1/" + slug + "/prices/mark-ups",
                    brackets.stream().map(MarkUpsApi::document).toList());
        });
    }

    private boolean known(String scope, String item) {
        return scope.equals("part")
                ? parts.find(item).isPresent()
                : trade.catalogue().parts().stream()
                        .anyMatch(kind -> kind.code().equals(item));
    }

    private LocalDate from(Asked asked) {
        return asked.value("from") == null ? today.day() : asked.day("from");
    }

    /** One cent stands in for a step that was not understood. */
    private static Money step(Asked asked, Currency currency) {
        Money step = asked.money("step", currency);
        if (asked.value("step") != null && !step.isPositive()) {
            asked.refuse(Refusal.of("typed.number").at("step"));
        }
        return step.isPositive() ? step : new Money(1, currency);
    }

    private static MarkUpDocument document(MarkUp rule) {
        return new MarkUpDocument(
                rule.scope().code(),
                rule.item(),
                Amount.of(rule.costFrom()),
                rule.percent() == null
                        ? null
                        : rule.percent().stripTrailingZeros().toPlainString(),
                Amount.of(rule.step()),
                rule.from());
    }
}
