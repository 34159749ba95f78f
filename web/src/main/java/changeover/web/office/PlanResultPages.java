package changeover.web.office;

import changeover.billing.costs.PlanResults;
import changeover.billing.costs.PlanResults.Over;
import changeover.billing.costs.PriceRise;
import changeover.billing.costs.Results;
import changeover.contracts.tenants.Today;
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
import jakarta.ws.rs.Path;
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
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Which plans and which homes lose money: what was earned against what the visits cost, and what a rise of prices would bring. */
@Path("/{slug}/money/plans")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("owner")
public class PlanResultPages {

    private static final BigDecimal USUAL = BigDecimal.valueOf(5);

    /** A plan with the sums of its agreements. */
    public record Row(
            UUID id,
            String name,
            int agreements,
            int losing,
            String earned,
            String cost,
            String left,
            String margin,
            boolean loses) {}

    public record Line(String code, String amount) {}

    /** @param margin of what was earned so far, in percent; empty where nothing was */
    public record Rise(
            UUID plan,
            String name,
            int agreements,
            String now,
            String rise,
            String then,
            String margin,
            String marginThen,
            int losing,
            int wouldLose) {}

    public record View(
            String day,
            String asked,
            String over,
            List<Row> rows,
            String earned,
            String cost,
            String left,
            boolean loses,
            String margins,
            List<Line> causes,
            String pie,
            List<PlanCostPages.Missing> missing,
            List<Rise> rises,
            String riseNow,
            String riseMore,
            String riseThen,
            String percent) {}

    /** One agreement. */
    public record DealRow(
            UUID agreement,
            int number,
            String plan,
            UUID homeId,
            String home,
            int visits,
            String earned,
            String cost,
            String left,
            boolean loses) {}

    public record Deals(
            String day,
            String asked,
            String over,
            String plan,
            @Nullable UUID planId,
            List<DealRow> rows,
            Leaf leaf,
            String earned,
            String cost,
            String left,
            boolean loses) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance planresults(Frame frame, View view, Said form);

        static native TemplateInstance plandeals(Frame frame, Deals list);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Today today;

    @Inject
    PlanResults results;

    @Inject
    ResultsInWords words;

    @GET
    @Transactional
    public Response plans(@Context UriInfo asked) {
        var typed = new Typed(asked.getQueryParameters());
        try {
            @Nullable LocalDate day = typed.dayOrNone("day");
            Over over = over(typed);
            BigDecimal percent = percent(typed);
            typed.understood();
            return Response.ok(page(day == null ? today.day() : day, over, percent, typed, Map.of()))
                    .build();
        } catch (Refused refused) {
            return desk.refuse(refused.refusals(), refusals -> {
                Map<String, String> errors =
                        Said.again(typed, refusals, frames.locale()).errors();
                return page(today.day(), Over.TERM, USUAL, typed, errors);
            });
        }
    }

    @GET
    @Path("agreements")
    @Transactional
    public TemplateInstance agreements(@Context UriInfo asked) {
        var typed = new Typed(asked.getQueryParameters());
        @Nullable LocalDate day = typed.dayOrNone("day");
        Over over = over(typed);
        @Nullable UUID plan = typed.idOrNone("plan");
        typed.understood();
        Frame frame = frames.of(Tab.MONEY);
        Results on = results.on(day == null ? today.day() : day, over);
        Results listed = new Results(on.day(), over, on.currency(), on.worstFirst(Optional.ofNullable(plan)));
        return Pages.plandeals(
                frame, words.deals(listed, plan, Leaf.of(asked, listed.deals().size()), frame));
    }

    static Over over(Typed typed) {
        return typed.line("over", 10) != null
                        && typed.oneOf("over", Set.of("term", "year")).equals("year")
                ? Over.YEAR
                : Over.TERM;
    }

    static BigDecimal percent(Typed typed) {
        return typed.line("rise", 20) == null
                ? USUAL
                : typed.number("rise", BigDecimal.valueOf(-100), BigDecimal.valueOf(1000));
    }

    private TemplateInstance page(
            LocalDate day, Over over, BigDecimal percent, Typed typed, Map<String, String> errors) {
        Frame frame = frames.of(Tab.MONEY);
        Results on = results.on(day, over);
        Map<String, List<String>> values = new HashMap<>(typed.asTyped());
        values.putIfAbsent("day", List.of(day.toString()));
        values.putIfAbsent("over", List.of(words.code(over)));
        values.putIfAbsent("rise", List.of(PlanForm.plain(percent, frame.locale())));
        Results terms = over == Over.TERM ? on : results.on(day, Over.TERM);
        return Pages.planresults(
                frame, words.view(on, PriceRise.of(terms, percent), frame), new Said(values, errors, List.of()));
    }
}
