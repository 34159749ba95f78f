package changeover.web.office;

import changeover.billing.costs.PlanResults;
import changeover.billing.costs.PlanResults.Over;
import changeover.billing.costs.StockValue;
import changeover.billing.ledger.Earned;
import changeover.billing.ledger.EarnedOn;
import changeover.billing.ledger.EarnedOn.Plan;
import changeover.billing.payments.DepositsHeld;
import changeover.billing.payments.Owed;
import changeover.billing.payments.OwedBy;
import changeover.contracts.money.Money;
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
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** What is earned, owed as service and owed in money at the end of any day; each number opens what it is the sum of. */
@Path("/{slug}/money/earned")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class EarnedPages {

    /** Earned in the month, the year and since the beginning, in words. */
    public record Line(String month, String year, String ever) {}

    /** What is open of an age; {@code code} is the age's word in an address. */
    public record Open(String code, String amount) {}

    public record View(
            String day,
            String asked,
            Line plans,
            Line visits,
            Line fees,
            Line all,
            String prepaid,
            int agreements,
            String over,
            int overs,
            String ahead,
            int aheads,
            int ended,
            List<Open> ages,
            String open,
            String credit,
            String beyond,
            String stock,
            int withoutCost,
            List<PlanResultPages.Row> results,
            String deposits,
            List<GivenUpFigures.Line> givenUp) {}

    /** An agreement on the day, in words. */
    public record Row(
            UUID id,
            int number,
            String customer,
            UUID customerId,
            String home,
            UUID homeId,
            String plan,
            String term,
            String ended,
            String basis,
            String invoiced,
            String givenBack,
            String earned,
            String prepaid,
            String ahead) {}

    public record Agreements(
            String of,
            String day,
            String asked,
            List<Row> rows,
            Leaf leaf,
            String invoiced,
            String earned,
            String sum) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance earned(Frame frame, View view, Said form);

        static native TemplateInstance earnedplans(Frame frame, Agreements list);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Today today;

    @Inject
    Earned earned;

    @Inject
    Owed owed;

    @Inject
    StockValue stock;

    @Inject
    PlanResults results;

    @Inject
    DepositsHeld held;

    @Inject
    GivenUpFigures givenUp;

    @GET
    @Transactional
    public Response earned(@Context UriInfo asked) {
        var typed = new Typed(asked.getQueryParameters());
        try {
            LocalDate day = day(typed);
            return Response.ok(page(day, Said.filled(Map.of("day", day.toString()))))
                    .build();
        } catch (Refused refused) {
            return desk.refuse(
                    refused.refusals(), refusals -> page(today.day(), Said.again(typed, refusals, frames.locale())));
        }
    }

    @GET
    @Path("agreements")
    @Transactional
    public TemplateInstance agreements(@Context UriInfo asked, @Nullable @QueryParam("of") String of) {
        LocalDate day = day(new Typed(asked.getQueryParameters()));
        Frame frame = frames.of(Tab.MONEY);
        EarnedOn on = earned.on(day);
        List<Plan> plans = on.where(shown(of == null ? "" : of, on));
        EarnedOn listed = new EarnedOn(day, on.currency(), plans, on.visits(), on.fees());
        Leaf leaf = Leaf.of(asked, plans.size());
        Money sum = "ahead".equals(of) ? listed.sum(Plan::ahead) : listed.sum(Plan::prepaid);
        return Pages.earnedplans(
                frame,
                new Agreements(
                        of == null ? "" : of,
                        frame.inWords(day),
                        day.toString(),
                        leaf.shown(plans).stream()
                                .map(plan -> EarnedRows.row(plan, frame))
                                .toList(),
                        leaf,
                        said(listed.sum(Plan::invoiced), frame),
                        said(listed.earnedByPlans().ever(), frame),
                        said(sum, frame)));
    }

    private static Predicate<Plan> shown(String of, EarnedOn on) {
        return switch (of) {
            case "earned" -> plan -> !plan.earned().ever().isZero();
            case "prepaid" -> plan -> plan.prepaid().isPositive();
            case "over" -> on::overdue;
            case "ahead" -> plan -> plan.ahead().isPositive();
            case "ended" -> plan -> plan.ended() != null;
            default -> throw new NotFoundException();
        };
    }

    private LocalDate day(Typed typed) {
        @Nullable LocalDate day = typed.dayOrNone("day");
        typed.understood();
        return day == null ? today.day() : day;
    }

    private TemplateInstance page(LocalDate day, Said form) {
        Frame frame = frames.of(Tab.MONEY);
        EarnedOn on = earned.on(day);
        List<Plan> over = on.where(on::overdue);
        OwedBy by = owed.all(day);
        StockValue.On parts = stock.on(day);
        return Pages.earned(
                frame,
                new View(
                        frame.inWords(day),
                        day.toString(),
                        EarnedRows.line(on.earnedByPlans(), frame),
                        EarnedRows.line(on.visits(), frame),
                        EarnedRows.line(on.fees(), frame),
                        EarnedRows.line(on.together(), frame),
                        said(on.sum(Plan::prepaid), frame),
                        on.where(plan -> plan.prepaid().isPositive()).size(),
                        said(Money.sum(over.stream().map(Plan::prepaid).toList(), on.currency()), frame),
                        over.size(),
                        said(on.sum(Plan::ahead), frame),
                        on.where(plan -> plan.ahead().isPositive()).size(),
                        on.where(plan -> plan.ended() != null).size(),
                        EarnedRows.ages(by, frame),
                        said(by.open(), frame),
                        said(by.credit(), frame),
                        said(by.beyond(), frame),
                        said(parts.value(), frame),
                        parts.withoutCost().size(),
                        frame.role().equals("owner")
                                ? ResultsInWords.rows(results.on(day, Over.TERM), frame)
                                : List.of(),
                        said(
                                Money.sum(
                                        held.on(day).stream()
                                                .map(DepositsHeld.Held::left)
                                                .toList(),
                                        on.currency()),
                                frame),
                        givenUp.on(day, frame)),
                form);
    }

    static String said(Money money, Frame frame) {
        return money.format(frame.locale());
    }
}
