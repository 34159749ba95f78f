package changeover.web.api;

import changeover.billing.costs.DealResult;
import changeover.billing.costs.PlanResults;
import changeover.billing.costs.PlanResults.Over;
import changeover.billing.costs.Results;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Wording;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What plans earned against what their visits cost, for the owner. */
@Path("/api/v1/{slug}/plan-results")
@RolesAllowed("owner")
public class PlanResultsApi {

    /** @param visits trips to the home, those for nothing too */
    public record AgreementDocument(
            UUID agreement, int number, UUID home, int visits, Amount earned, Amount cost, Amount left) {}

    /** @param margin what is left of what was earned, in percent of it; null where nothing was */
    public record PlanDocument(
            UUID plan,
            Wording name,
            Amount earned,
            Amount cost,
            Amount left,
            @Nullable String margin,
            List<AgreementDocument> agreements) {}

    /** @param missing costs that nobody wrote down, so that the plans cost more than is said */
    public record ResultsDocument(
            LocalDate day,
            String over,
            List<PlanDocument> plans,
            Amount earned,
            Amount cost,
            List<PlanCostApi.MissingDocument> missing) {}

    @Inject
    PlanResults results;

    @Inject
    Today today;

    /** At the end of the day (today); over the terms that hold on it ({@code term}) or its calendar year ({@code year}). */
    @GET
    @Transactional
    public ResultsDocument on(@Nullable @QueryParam("day") String day, @Nullable @QueryParam("over") String over) {
        @Nullable String word = AskedInQuery.oneOf("over", over, Set.of("term", "year"));
        Results on = results.on(
                day == null ? today.day() : AskedInQuery.day("day", day), "year".equals(word) ? Over.YEAR : Over.TERM);
        return new ResultsDocument(
                on.day(),
                on.over().name().toLowerCase(Locale.ROOT),
                on.byPlan().stream().map(PlanResultsApi::plan).toList(),
                Amount.of(on.earned()),
                Amount.of(on.cost()),
                on.missing().stream()
                        .map(one -> new PlanCostApi.MissingDocument(
                                one.what().name().toLowerCase(Locale.ROOT).replace('_', '-'), one.part()))
                        .toList());
    }

    private static PlanDocument plan(Results.OfPlan plan) {
        return new PlanDocument(
                plan.planId(),
                plan.plan(),
                Amount.of(plan.earned()),
                Amount.of(plan.cost()),
                Amount.of(plan.left()),
                plan.margin().map(BigDecimal::toPlainString).orElse(null),
                plan.deals().stream().map(PlanResultsApi::agreement).toList());
    }

    private static AgreementDocument agreement(DealResult one) {
        return new AgreementDocument(
                one.deal().agreementId(),
                one.deal().number(),
                one.deal().homeId(),
                one.visits(),
                Amount.of(one.earned()),
                Amount.of(one.cost()),
                Amount.of(one.left()));
    }
}
