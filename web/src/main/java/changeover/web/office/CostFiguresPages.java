package changeover.web.office;

import changeover.billing.costs.RunningCost;
import changeover.billing.costs.RunningCosts;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.Overhead;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.Prices;
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
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What the business's own work costs it, from a day on: set-up at a visit, overhead, the place where trips begin. */
@Path("/{slug}/shop/costs")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("owner")
public class CostFiguresPages {

    /** @param place in degrees, or empty */
    public record Row(String from, int setUpMinutes, boolean percent, String overhead, String place) {}

    /** @param hour what an hour of labour costs today, by the price book; empty where it says nothing */
    public record View(List<Row> rows, String hour, String since) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance costfigures(Frame frame, View view, Said form);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Desk desk;

    @Inject
    RunningCosts costs;

    @Inject
    Prices prices;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance list() {
        Frame frame = frames.of(Tab.SHOP);
        return page(Said.filled(filled(costs.all(), frame)), frame);
    }

    @POST
    public Response keep(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    costs.set(read(typed));
                    return SaidOnce.at("/" + slug + "/shop/costs", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale()), frames.of(Tab.SHOP)));
    }

    private RunningCost.Facts read(Typed typed) {
        boolean percent = typed.oneOf("way", Set.of("percent", "hour")).equals("percent");
        var facts = new RunningCost.Facts(
                typed.day("from"),
                typed.whole("setUpMinutes", 0, RunningCost.LONGEST_SET_UP),
                percent
                        ? new Overhead.Percent(typed.number("overhead", BigDecimal.ZERO, RunningCost.MOST_PERCENT))
                        : new Overhead.AnHour(
                                typed.money("overhead", businesses.current().currency())),
                typed.numberOrNone("latitude", -90, 90),
                typed.numberOrNone("longitude", -180, 180));
        typed.understood();
        return facts;
    }

    /** The newest figures stand in the form, so that one of them can be changed. */
    private static Map<String, String> filled(List<RunningCost> all, Frame frame) {
        Map<String, String> fields = new HashMap<>();
        fields.put("from", frame.today().toString());
        fields.put("way", "percent");
        if (!all.isEmpty()) {
            RunningCost.Facts newest = all.getFirst().facts();
            fields.put("setUpMinutes", String.valueOf(newest.setUpMinutes()));
            fields.put("way", newest.overhead() instanceof Overhead.Percent ? "percent" : "hour");
            fields.put("overhead", PlanForm.plain(amount(newest.overhead()), frame.locale()));
            fields.put("latitude", degrees(newest.latitude(), frame.locale()));
            fields.put("longitude", degrees(newest.longitude(), frame.locale()));
        }
        return fields;
    }

    private static BigDecimal amount(Overhead overhead) {
        return switch (overhead) {
            case Overhead.Percent(BigDecimal percent) -> percent;
            case Overhead.AnHour(Money hour) -> hour.amount();
        };
    }

    private static String degrees(@Nullable BigDecimal degrees, Locale locale) {
        return degrees == null ? "" : Written.of(degrees, locale);
    }

    private TemplateInstance page(Said form, Frame frame) {
        @Nullable
        PriceEntry hour = prices.book()
                .on(ItemKind.LABOUR, PriceBook.HOUR, frame.today())
                .filter(entry -> entry.cost() != null)
                .orElse(null);
        @Nullable Money cost = hour == null ? null : hour.cost();
        return Pages.costfigures(
                frame,
                new View(
                        costs.all().stream().map(one -> row(one.facts(), frame)).toList(),
                        cost == null ? "" : cost.format(frame.locale()),
                        hour == null ? "" : frame.inWords(hour.from())),
                form);
    }

    private static Row row(RunningCost.Facts facts, Frame frame) {
        boolean percent = facts.overhead() instanceof Overhead.Percent;
        String said = facts.overhead() instanceof Overhead.AnHour(Money hour)
                ? hour.format(frame.locale())
                : PlanForm.plain(amount(facts.overhead()), frame.locale());
        String place = facts.latitude() == null || facts.longitude() == null
                ? ""
                : PlanForm.plain(facts.latitude(), frame.locale()) + " · "
                        + PlanForm.plain(facts.longitude(), frame.locale());
        return new Row(frame.brief(facts.from()), facts.setUpMinutes(), percent, said, place);
    }
}
