package changeover.web.office;

import changeover.billing.costs.AgainstPlan;
import changeover.billing.costs.AgainstPlan.By;
import changeover.billing.costs.CostBooks;
import changeover.billing.costs.KeptVisit;
import changeover.billing.costs.KeptVisits;
import changeover.billing.ledger.Period;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Today;
import changeover.scheduling.partners.Partner;
import changeover.scheduling.partners.Partners;
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
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** What the visits of a period took and gave against what was foreseen, by agreement, plan, technician or kind of machine. */
@Path("/{slug}/money/plans")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("owner")
public class AgainstPlanPages {

    private static final Set<String> BYS = Set.of("agreement", "plan", "technician", "kind");

    /**
     * A line.
     *
     * @param key what is counted together
     * @param link where a click on its name leads, or empty
     */
    public record Row(
            String key,
            String words,
            String second,
            String link,
            int visits,
            int returns,
            int planned,
            int actual,
            boolean longer,
            String foreseen,
            String cost,
            String partsForeseen,
            String parts) {}

    public record View(
            String period,
            String query,
            String by,
            List<Row> rows,
            Leaf leaf,
            int visits,
            int planned,
            int actual,
            String foreseen,
            String cost,
            String partsForeseen,
            String parts,
            boolean whole) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance againstplan(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    Today today;

    @Inject
    KeptVisits kept;

    @Inject
    CostBooks books;

    @Inject
    OwnCatalogue trade;

    @Inject
    Partners partners;

    @GET
    @Path("minutes")
    @Transactional
    public Response minutes(@Context UriInfo asked) {
        var typed = new Typed(asked.getQueryParameters());
        String by = typed.line("by", 20) == null ? "plan" : typed.oneOf("by", BYS);
        PeriodAsked period = PeriodAsked.of(typed, today.day());
        return period.refusals().isEmpty()
                ? Response.ok(page(asked, period.period(), by, typed, Map.of())).build()
                : desk.refuse(period.refusals(), refusals -> {
                    Map<String, String> errors =
                            Said.again(typed, refusals, frames.locale()).errors();
                    return page(asked, period.period(), BYS.contains(by) ? by : "plan", typed, errors);
                });
    }

    private TemplateInstance page(UriInfo asked, Period period, String by, Typed typed, Map<String, String> errors) {
        Frame frame = frames.of(Tab.MONEY);
        var book = books.read();
        By how = By.valueOf(by.toUpperCase(Locale.ROOT));
        List<KeptVisit> visits = kept.between(period.from(), period.until()).visits();
        List<AgainstPlan> lines = AgainstPlan.of(visits, how, book);
        Leaf leaf = Leaf.of(asked, lines.size());
        Catalogue catalogue = trade.catalogue();
        Set<UUID> withUs = by.equals("technician")
                ? partners.all().stream().map(Partner::id).collect(Collectors.toSet())
                : Set.of();
        Map<String, List<String>> values = new HashMap<>(typed.asTyped());
        values.putIfAbsent("from", List.of(period.from().toString()));
        values.putIfAbsent("until", List.of(period.until().toString()));
        values.putIfAbsent("by", List.of(by));
        return Pages.againstplan(
                frame,
                new View(
                        PeriodAsked.inWords(period, frame),
                        "from=" + period.from() + "&until=" + period.until(),
                        by,
                        leaf.shown(lines).stream()
                                .map(line -> row(line, by, catalogue, withUs, frame))
                                .toList(),
                        leaf,
                        how == By.KIND
                                ? 0
                                : AgainstPlan.behind(visits, how, null, book).stream()
                                        .mapToInt(AgainstPlan::visits)
                                        .sum(),
                        lines.stream().mapToInt(AgainstPlan::planned).sum(),
                        lines.stream().mapToInt(AgainstPlan::actual).sum(),
                        sum(lines.stream().map(AgainstPlan::foreseen).toList(), book.currency(), frame),
                        sum(lines.stream().map(AgainstPlan::cost).toList(), book.currency(), frame),
                        sum(lines.stream().map(AgainstPlan::partsForeseen).toList(), book.currency(), frame),
                        sum(lines.stream().map(AgainstPlan::parts).toList(), book.currency(), frame),
                        lines.stream().allMatch(AgainstPlan::whole)),
                new Said(values, errors, List.of()));
    }

    private static String sum(List<Money> amounts, Currency currency, Frame frame) {
        return Money.sum(amounts, currency).format(frame.locale());
    }

    /** @param withUs the partners that have a page: those we still work with */
    private static Row row(AgainstPlan line, String by, Catalogue catalogue, Set<UUID> withUs, Frame frame) {
        var deal = line.one().deal();
        String plan = deal.plan().in(frame.locale());
        String words = switch (by) {
            case "agreement" -> plan + ", " + deal.number();
            case "plan" -> plan;
            case "technician" -> line.key().isEmpty() ? "–" : line.one().technician();
            default -> kind(line.key(), catalogue, frame);
        };
        String link = switch (by) {
            case "agreement" -> "agreements/" + deal.agreementId();
            case "plan" -> "money/plans/" + deal.planId();
            case "technician" -> who(line.one(), withUs);
            default -> "";
        };
        return new Row(
                line.key(),
                words,
                by.equals("agreement") ? deal.home() : "",
                link,
                line.visits(),
                line.returns(),
                line.planned(),
                line.actual(),
                line.actual() > line.planned(),
                line.foreseen().format(frame.locale()),
                line.cost().format(frame.locale()),
                line.partsForeseen().format(frame.locale()),
                line.parts().format(frame.locale()));
    }

    private static String who(KeptVisit visit, Set<UUID> withUs) {
        UUID technician = visit.technicianId();
        if (technician == null || visit.partner() != null && !withUs.contains(technician)) {
            return "";
        }
        return (visit.partner() == null ? "shop/people/" : "shop/partners/") + technician;
    }

    private static String kind(String code, Catalogue catalogue, Frame frame) {
        return catalogue.kinds().stream()
                .filter(one -> one.code().equals(code))
                .map(one -> one.wording().in(frame.locale()))
                .findFirst()
                .orElse("–");
    }
}
