package changeover.web.office;

import changeover.billing.pricing.MarkUp;
import changeover.billing.pricing.MarkUps;
import changeover.billing.pricing.PricingRules;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Today;
import changeover.web.office.PriceNames.Choice;
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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The rules that make a part's price of its cost: for one part, for a kind, or by what a part costs. */
@Path("/{slug}/shop/prices/mark-ups")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({"owner", "office"})
public class MarkUpPages {

    /** As many rules by cost may stand together. */
    private static final List<Integer> BRACKETS = List.of(1, 2, 3, 4, 5, 6);

    private static final BigDecimal MOST = BigDecimal.valueOf(2000);

    public record Row(String from, String whom, String words) {}

    /** The two fields of one rule by cost. */
    public record Bracket(String cost, String percent) {}

    @CheckedTemplate(basePath = "office")
    static class Pages {
        static native TemplateInstance markups(
                Frame frame,
                List<Row> held,
                List<Row> coming,
                List<Choice> choices,
                List<Bracket> brackets,
                Said one,
                Said byCost);

        private Pages() {}
    }

    @Inject
    Frames frames;

    @Inject
    Today today;

    @Inject
    Desk desk;

    @Inject
    PricingRules rules;

    @Inject
    PriceNames names;

    @Inject
    MarkUpsInWords words;

    @Inject
    Businesses businesses;

    @GET
    @Transactional
    public TemplateInstance page() {
        return page(freshOne(), freshByCost());
    }

    @POST
    @RolesAllowed("owner")
    public Response set(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Currency currency = businesses.current().currency();
                    Set<String> known =
                            choices(frames.locale()).stream().map(Choice::value).collect(Collectors.toSet());
                    String[] whom = typed.oneOf("whom", known).split(":", 2);
                    BigDecimal percent = typed.numberOrNone("percent", 0, MOST.longValue());
                    Money step = step(typed, currency);
                    LocalDate from = typed.day("from");
                    typed.understood();
                    rules.set(new MarkUp(MarkUp.Scope.of(whom[0]), whom[1], Money.zero(currency), percent, step, from));
                    return SaidOnce.at("/" + slug + "/shop/prices/mark-ups", "kept");
                },
                refusals -> page(Said.again(typed, refusals, frames.locale()), freshByCost()));
    }

    @POST
    @Path("by-cost")
    @RolesAllowed("owner")
    public Response setByCost(@PathParam("slug") String slug, MultivaluedMap<String, String> fields) {
        var typed = new Typed(fields);
        return desk.answer(
                () -> {
                    Currency currency = businesses.current().currency();
                    Money step = step(typed, currency);
                    LocalDate from = typed.day("from");
                    var brackets = new ArrayList<MarkUp>();
                    for (int at : BRACKETS) {
                        if (at == 1 || typed.line("percent" + at, 20) != null || typed.line("cost" + at, 20) != null) {
                            Money cost = typed.money("cost" + at, currency);
                            BigDecimal percent = typed.number("percent" + at, BigDecimal.ZERO, MOST);
                            brackets.add(new MarkUp(MarkUp.Scope.COST, "", cost, percent, step, from));
                        }
                    }
                    typed.understood();
                    rules.setByCost(brackets);
                    return SaidOnce.at("/" + slug + "/shop/prices/mark-ups", "kept");
                },
                refusals -> page(freshOne(), Said.again(typed, refusals, frames.locale())));
    }

    /** What prices are rounded to; a stand-in of one cent where it was not understood. */
    static Money step(Typed typed, Currency currency) {
        BigDecimal cent = new Money(1, currency).amount();
        BigDecimal step = typed.number("step", cent, BigDecimal.valueOf(1000));
        if (step.stripTrailingZeros().scale() > cent.scale()) {
            typed.refuse(changeover.contracts.words.Refusal.of("typed.cents").at("step"));
            return Money.of(cent, currency);
        }
        return Money.rounded(step, currency);
    }

    private Money fiveCents() {
        return new Money(5, businesses.current().currency());
    }

    private Said freshOne() {
        return Said.filled(Map.of(
                "step",
                Written.of(fiveCents(), frames.locale()),
                "from",
                today.day().toString()));
    }

    private Said freshByCost() {
        var fields = new HashMap<String, String>();
        Locale locale = frames.locale();
        fields.put("step", Written.of(fiveCents(), locale));
        fields.put("from", today.day().toString());
        fields.put("cost1", Written.of(Money.zero(businesses.current().currency()), locale));
        List<MarkUp> held = rules.markUps().byCost(today.day());
        for (int at = 0; at < held.size() && at < BRACKETS.size(); at++) {
            @Nullable BigDecimal percent = held.get(at).percent();
            fields.put("cost" + (at + 1), Written.of(held.get(at).costFrom(), locale));
            fields.put("percent" + (at + 1), percent == null ? "" : Written.of(percent, locale));
            fields.put("step", Written.of(held.get(at).step(), locale));
        }
        return Said.filled(fields);
    }

    private List<Choice> choices(Locale locale) {
        Stream<Choice> kinds =
                names.kinds(locale).stream().map(kind -> new Choice("kind:" + kind.value(), kind.words()));
        Stream<Choice> parts = names.choices(today.day(), locale).stream()
                .filter(one -> one.value().startsWith("part:"));
        return Stream.concat(kinds, parts).toList();
    }

    private TemplateInstance page(Said one, Said byCost) {
        Frame frame = frames.of(Tab.SHOP);
        MarkUps all = rules.markUps();
        LocalDate day = today.day();
        List<Row> held = Stream.concat(all.named(day).stream(), all.byCost(day).stream())
                .map(rule -> row(rule, frame))
                .toList();
        List<Row> coming = all.rules().stream()
                .filter(rule -> rule.from().isAfter(day))
                .sorted(Comparator.comparing(MarkUp::from))
                .map(rule -> row(rule, frame))
                .toList();
        return Pages.markups(frame, held, coming, choices(frame.locale()), fields(), one, byCost);
    }

    private static List<Bracket> fields() {
        return BRACKETS.stream()
                .map(at -> new Bracket("cost" + at, "percent" + at))
                .toList();
    }

    private Row row(MarkUp rule, Frame frame) {
        return new Row(frame.brief(rule.from()), words.whom(rule, frame.locale()), words.price(rule, frame.locale()));
    }
}
