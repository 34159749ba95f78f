package changeover.web.office;

import changeover.billing.costs.Deal;
import changeover.billing.costs.KeptVisits;
import changeover.billing.costs.PlanCosts;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.Plans;
import changeover.contracts.words.Refused;
import changeover.web.session.Desk;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
import changeover.web.session.Said;
import changeover.web.session.Tab;
import changeover.web.session.Typed;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What one plan costs to keep in one home, its spread, and the price for a margin that the owner types. */
@Path("/{slug}/money/plans")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("owner")
public class PlanCostPages {

    /** The same seed at each look, so that a page says the same twice. */
    public static final long SEED = 1;

    private static final BigDecimal USUAL = BigDecimal.valueOf(30);
    private static final BigDecimal MOST = new BigDecimal("99.9");

    public record Line(String code, String amount, String minutes) {}

    /** @param what is missing, and which part where it is one */
    public record Missing(String what, String part) {}

    public record Spread(String low, String middle, String high, int visits, boolean little, List<String> few) {}

    public record Answer(
            UUID home,
            String street,
            String price,
            String cost,
            String left,
            String margin,
            boolean loses,
            int visits,
            int unkept,
            boolean repairs,
            List<Line> lines,
            List<Missing> missing,
            String asked,
            String priceForMargin,
            @Nullable Spread spread,
            String svg) {}

    public record View(
            UUID id,
            String name,
            String q,
            List<PlanTried.Choice> homes,
            @Nullable Answer answer) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance plancost(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Plans plans;

    @Inject
    PlanCosts costs;

    @Inject
    KeptVisits kept;

    @Inject
    PlanTried tried;

    @Inject
    PlanCostInWords words;

    @GET
    @Path("{id}")
    @Transactional
    public Response cost(@PathParam("id") UUID id, @Context UriInfo asked) {
        Plan plan = plans.find(id).orElseThrow(NotFoundException::new);
        var typed = new Typed(asked.getQueryParameters());
        @Nullable UUID home = typed.idOrNone("home");
        try {
            BigDecimal margin =
                    typed.line("margin", 20) == null ? USUAL : typed.number("margin", BigDecimal.valueOf(-1000), MOST);
            typed.understood();
            return Response.ok(page(plan, home, margin, typed, Map.of())).build();
        } catch (Refused refused) {
            return desk.refuse(refused.refusals(), refusals -> {
                Said again = Said.again(typed, refusals, frames.locale());
                return page(plan, again.error("home").isEmpty() ? home : null, USUAL, typed, again.errors());
            });
        }
    }

    private TemplateInstance page(
            Plan plan, @Nullable UUID asked, BigDecimal margin, Typed typed, Map<String, String> errors) {
        Frame frame = frames.of(Tab.MONEY);
        String q = errors.isEmpty() ? said(typed.line("q", 100)) : "";
        UUID home = asked == null ? someHome(plan.id(), frame.today()) : asked;
        @Nullable
        Answer answer = home == null
                ? null
                : costs.withSpread(plan.facts(), home, frame.today(), SEED)
                        .map(found -> words.answer(home, found, margin, frame))
                        .orElseThrow(NotFoundException::new);
        Map<String, List<String>> values = new HashMap<>(typed.asTyped());
        values.putIfAbsent("margin", List.of(PlanForm.plain(margin, frame.locale())));
        return Pages.plancost(
                frame,
                new View(plan.id(), plan.name().in(frame.locale()), q, tried.choices(q), answer),
                new Said(values, errors, List.of()));
    }

    private static String said(@Nullable String text) {
        return text == null ? "" : text;
    }

    /** A home that has the plan today, so that the page says something at once. */
    private @Nullable UUID someHome(UUID plan, LocalDate today) {
        return kept.deals().stream()
                .filter(deal -> deal.planId().equals(plan) && deal.holds(today))
                .map(Deal::homeId)
                .findFirst()
                .orElse(null);
    }
}
