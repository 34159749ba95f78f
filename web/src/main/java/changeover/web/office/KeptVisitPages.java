package changeover.web.office;

import changeover.billing.costs.AgainstPlan;
import changeover.billing.costs.AgainstPlan.By;
import changeover.billing.costs.CostBooks;
import changeover.billing.costs.KeptVisit;
import changeover.billing.costs.KeptVisits;
import changeover.billing.costs.PlanResults;
import changeover.billing.costs.PlanResults.Over;
import changeover.billing.costs.VisitCost;
import changeover.billing.ledger.Period;
import changeover.billing.pricing.Cause;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.web.session.Frame;
import changeover.web.session.Frames;
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
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The visits that a cost is the sum of, and the visits that are counted together against their plan. */
@Path("/{slug}/money/plans")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("owner")
public class KeptVisitPages {

    /** The causes of a visit's cost; its set-up stands in the work on site. */
    private static final List<Cause> CAUSES =
            List.of(Cause.TASKS, Cause.TRAVEL, Cause.PARTS, Cause.READY, Cause.OVERHEAD);

    /**
     * Somebody went to a home or sent something there, in words.
     *
     * @param link to the visit, or to the home
     */
    public record Visit(
            String link,
            String how,
            String day,
            String technician,
            UUID agreement,
            String plan,
            int number,
            String home) {}

    /** @param amounts in the order of the causes */
    public record Row(Visit visit, List<Amount> amounts, String total) {}

    public record Amount(String cause, String amount) {}

    /** @param cause the one that is asked, or empty for all */
    public record Costs(
            String day,
            String asked,
            String over,
            String cause,
            List<String> causes,
            List<Row> rows,
            Leaf leaf,
            List<Amount> sums,
            String sum) {}

    /** A visit against its plan; of a kind of machine its share. */
    public record Against(
            Visit visit,
            int planned,
            int actual,
            boolean longer,
            String foreseen,
            String cost,
            String partsForeseen,
            String parts) {}

    public record Behind(
            String period,
            String back,
            List<Against> rows,
            Leaf leaf,
            int planned,
            int actual,
            String foreseen,
            String cost,
            String partsForeseen,
            String parts) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance keptvisits(Frame frame, Costs list);

        static native TemplateInstance visitsagainst(Frame frame, Behind list);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    PlanResults results;

    @Inject
    KeptVisits kept;

    @Inject
    CostBooks books;

    @GET
    @Path("visits")
    @Transactional
    public TemplateInstance costs(@Context UriInfo asked) {
        var typed = new Typed(asked.getQueryParameters());
        @Nullable LocalDate said = typed.dayOrNone("day");
        Over over = PlanResultPages.over(typed);
        @Nullable UUID plan = typed.idOrNone("plan");
        @Nullable UUID agreement = typed.idOrNone("agreement");
        @Nullable String code = typed.line("cause", 20);
        typed.understood();
        LocalDate day = said == null ? today.day() : said;
        List<Cause> causes = code == null ? CAUSES : List.of(cause(code));
        Frame frame = frames.of(Tab.MONEY);
        var on = results.on(day, over);
        List<VisitCost> visits = on.kept(Optional.ofNullable(plan), Optional.ofNullable(agreement)).stream()
                .filter(one -> code == null || !one.of(causes.getFirst()).isZero())
                .toList();
        Leaf leaf = Leaf.of(asked, visits.size());
        Function<Function<VisitCost, Money>, String> sum =
                of -> Money.sum(visits.stream().map(of).toList(), on.currency()).format(frame.locale());
        return Pages.keptvisits(
                frame,
                new Costs(
                        frame.inWords(day),
                        day.toString(),
                        over.name().toLowerCase(Locale.ROOT),
                        code == null ? "" : code,
                        causes.stream().map(Cause::code).toList(),
                        leaf.shown(visits).stream()
                                .map(one -> new Row(
                                        visit(one.visit(), frame),
                                        causes.stream()
                                                .map(cause -> new Amount(
                                                        cause.code(),
                                                        one.of(cause).format(frame.locale())))
                                                .toList(),
                                        one.total().format(frame.locale())))
                                .toList(),
                        leaf,
                        causes.stream()
                                .map(cause -> new Amount(cause.code(), sum.apply(one -> one.of(cause))))
                                .toList(),
                        sum.apply(VisitCost::total)));
    }

    private static Cause cause(String code) {
        return CAUSES.stream()
                .filter(one -> one.code().equals(code))
                .findFirst()
                .orElseThrow(NotFoundException::new);
    }

    /** Without a key every visit of the days. */
    @GET
    @Path("minutes/visits")
    @Transactional
    public TemplateInstance behind(@Context UriInfo asked) {
        Period period = PeriodAsked.understood(asked, today.day()).period();
        @Nullable String said = asked.getQueryParameters().getFirst("by");
        @Nullable String key = asked.getQueryParameters().getFirst("key");
        By by = Arrays.stream(By.values())
                .filter(one -> one.name().toLowerCase(Locale.ROOT).equals(said == null ? "plan" : said))
                .findFirst()
                .orElseThrow(NotFoundException::new);
        var book = books.read();
        List<AgainstPlan> lines =
                AgainstPlan.behind(kept.between(period.from(), period.until()).visits(), by, key, book);
        Leaf leaf = Leaf.of(asked, lines.size());
        Frame frame = frames.of(Tab.MONEY);
        Function<Function<AgainstPlan, Money>, String> sum = of ->
                Money.sum(lines.stream().map(of).toList(), book.currency()).format(frame.locale());
        return Pages.visitsagainst(
                frame,
                new Behind(
                        PeriodAsked.inWords(period, frame),
                        "from=" + period.from() + "&until=" + period.until() + "&by="
                                + by.name().toLowerCase(Locale.ROOT),
                        leaf.shown(lines).stream()
                                .map(line -> against(line, frame))
                                .toList(),
                        leaf,
                        lines.stream().mapToInt(AgainstPlan::planned).sum(),
                        lines.stream().mapToInt(AgainstPlan::actual).sum(),
                        sum.apply(AgainstPlan::foreseen),
                        sum.apply(AgainstPlan::cost),
                        sum.apply(AgainstPlan::partsForeseen),
                        sum.apply(AgainstPlan::parts)));
    }

    private static Against against(AgainstPlan line, Frame frame) {
        return new Against(
                visit(line.one(), frame),
                line.planned(),
                line.actual(),
                line.actual() > line.planned(),
                line.foreseen().format(frame.locale()),
                line.cost().format(frame.locale()),
                line.partsForeseen().format(frame.locale()),
                line.parts().format(frame.locale()));
    }

    private static Visit visit(KeptVisit one, Frame frame) {
        return new Visit(
                one.isTrip() ? "visits/" + one.visitId() : "homes/" + one.deal().homeId(),
                one.how().name().toLowerCase(Locale.ROOT),
                frame.brief(one.day()),
                who(one),
                one.deal().agreementId(),
                one.deal().plan().in(frame.locale()),
                one.deal().number(),
                one.deal().home());
    }

    private static String who(KeptVisit one) {
        KeptVisit.@Nullable Second second = one.second();
        return second == null ? one.technician() : one.technician() + ", " + second.name();
    }
}
