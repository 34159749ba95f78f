package changeover.web.api;

import changeover.billing.costs.PlanCosts;
import changeover.billing.costs.PlanCosts.Reckoned;
import changeover.billing.pricing.Cause;
import changeover.billing.pricing.CostSpread;
import changeover.billing.pricing.Margin;
import changeover.billing.pricing.PlanCost;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.Plans;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Refusal;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.QueryParam;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What a year of a plan costs to keep in a home, for the owner. */
@Path("/api/v1/{slug}/plans/{id}/cost")
@RolesAllowed("owner")
public class PlanCostApi {

    private static final BigDecimal MOST = new BigDecimal("99.9");

    /** @param minutes of the cause, null where it is not reckoned by minutes */
    public record CauseDocument(
            String cause, Amount amount, @Nullable Integer minutes) {}

    /** @param what hour, set-up, trip, part or overhead; {@code part} which part, empty for the rest */
    public record MissingDocument(String what, String part) {}

    /**
     * @param low one year in ten costs no more, {@code middle} one in two, {@code high} nine in ten
     * @param visits closed ones that it rests on; {@code restsOnLittle} when they are few
     * @param few kinds of machine of which too few are known to be drawn from alone
     */
    public record SpreadDocument(
            Amount low, Amount middle, Amount high, int visits, int years, boolean restsOnLittle, List<String> few) {}

    /**
     * @param cost at least so much while something is missing
     * @param margin of the price, in percent of it
     * @param priceForMargin of the margin that was asked; null without one, and while a cost is missing
     * @param unkept promises that find no place in the visits that are sold
     * @param repairs whether the plan promises repairs without charge, which stand in no figure here
     */
    public record CostDocument(
            UUID plan,
            UUID home,
            LocalDate day,
            int visits,
            List<CauseDocument> causes,
            Amount cost,
            List<MissingDocument> missing,
            Amount price,
            Amount left,
            @Nullable String margin,
            @Nullable Amount priceForMargin,
            @Nullable SpreadDocument spread,
            int unkept,
            boolean repairs) {}

    @Inject
    Plans plans;

    @Inject
    PlanCosts costs;

    @Inject
    Today today;

    /** In the home that is named, at the costs of the day, which is today when none is named; the same seed spreads alike. */
    @GET
    @Transactional
    public CostDocument cost(
            @PathParam("id") UUID id,
            @Nullable @QueryParam("home") String home,
            @Nullable @QueryParam("day") String said,
            @Nullable @QueryParam("margin") String margin,
            @Nullable @QueryParam("seed") String seed) {
        Plan plan = plans.find(id).orElseThrow(NotFoundException::new);
        @Nullable UUID where = AskedInQuery.id(home);
        if (where == null) {
            throw Refusal.of("typed.missing").at("home").thrown();
        }
        LocalDate day = said == null ? today.day() : AskedInQuery.day("day", said);
        @Nullable BigDecimal wanted = margin == null ? null : percent(margin);
        Reckoned found = costs.withSpread(plan.facts(), where, day, seed(seed)).orElseThrow(NotFoundException::new);
        PlanCost cost = found.cost();
        return new CostDocument(
                id,
                where,
                day,
                found.year().visits().size(),
                Arrays.stream(Cause.values()).map(cause -> cause(cost, cause)).toList(),
                Amount.of(cost.total()),
                cost.missing().stream()
                        .map(one -> new MissingDocument(
                                one.what().name().toLowerCase(Locale.ROOT).replace('_', '-'), one.part()))
                        .toList(),
                Amount.of(found.price()),
                Amount.of(found.price().minus(cost.total())),
                Margin.of(found.price(), cost.total())
                        .map(BigDecimal::toPlainString)
                        .orElse(null),
                wanted == null ? null : cost.priceFor(wanted).map(Amount::of).orElse(null),
                spread(found.spread()),
                found.unkept(),
                found.repairs());
    }

    private static BigDecimal percent(String said) {
        try {
            BigDecimal percent = new BigDecimal(said.strip());
            if (percent.compareTo(MOST) <= 0 && percent.compareTo(BigDecimal.valueOf(-1000)) >= 0) {
                return percent;
            }
        } catch (NumberFormatException notANumber) {
            throw Refusal.of("typed.number").at("margin").thrown();
        }
        throw Refusal.of("typed.between", Map.of("least", "-1000", "most", "99.9"))
                .at("margin")
                .thrown();
    }

    private static long seed(@Nullable String said) {
        if (said == null) {
            return 1;
        }
        try {
            return Long.parseLong(said.strip());
        } catch (NumberFormatException notANumber) {
            throw Refusal.of("typed.number").at("seed").thrown();
        }
    }

    private static CauseDocument cause(PlanCost cost, Cause cause) {
        PlanCost.Minutes minutes = cost.minutes();
        @Nullable
        Integer said = switch (cause) {
            case TASKS -> minutes.tasks();
            case SET_UP -> minutes.setUp();
            case TRAVEL -> minutes.travel();
            case READY -> minutes.ready();
            case PARTS, OVERHEAD -> null;
        };
        return new CauseDocument(cause.code(), Amount.of(cost.of(cause)), said);
    }

    private static @Nullable SpreadDocument spread(@Nullable CostSpread spread) {
        return spread == null
                ? null
                : new SpreadDocument(
                        Amount.of(spread.low()),
                        Amount.of(spread.middle()),
                        Amount.of(spread.high()),
                        spread.visits(),
                        spread.years(),
                        spread.restsOnLittle(),
                        spread.few().stream().sorted().toList());
    }
}
