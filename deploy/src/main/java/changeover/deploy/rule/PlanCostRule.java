package changeover.deploy.rule;

import changeover.billing.pricing.Cause;
import changeover.billing.pricing.CostRates;
import changeover.billing.pricing.CostSpread;
import changeover.billing.pricing.Margin;
import changeover.billing.pricing.Overhead;
import changeover.billing.pricing.PlanCost;
import changeover.billing.pricing.PlanYear;
import changeover.billing.pricing.Trip;
import changeover.contracts.calendar.Term;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.History;
import changeover.contracts.catalogue.LongestVisit;
import changeover.contracts.catalogue.SeasonRules;
import changeover.contracts.money.Money;
import changeover.scheduling.dayplan.routes.AsTheCrowFlies;
import changeover.scheduling.dayplan.routes.Travel;
import changeover.scheduling.visits.Machine;
import changeover.scheduling.visits.PromisedTask;
import changeover.scheduling.visits.Promises;
import changeover.scheduling.visits.VisitPlan;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** What a plan costs to keep in one home, the price for a margin, and how far the cost may lie from its plan. */
final class PlanCostRule implements Rule {

    @Override
    public String name() {
        return "plancost";
    }

    @Override
    public String says() {
        return "Says what a year of a plan costs to keep in one home, cause by cause, the price for a wished margin, and the"
                + " spread of the cost by visits of the past.";
    }

    @Override
    public String example() {
        return """
                {"visits": 2, "term": {"from": "2027-04-01", "months": 12}, "currency": "CAD",
                 "equipment": [{"name": "furnace", "kind": "gas-furnace", "fits": {"condensing": "no"}},
                               {"name": "filter", "kind": "filter-slot", "fits": {"size": "16x25x4", "thickness": "4"}}],
                 "given": {"filter": 2}, "readyMinutes": 0, "hour": "57.00", "setUpMinutes": 15,
                 "shop": {"latitude": 46.0, "longitude": -77.0}, "home": {"latitude": 46.1, "longitude": -77.0},
                 "parts": {"filter": "15.75"}, "overheadPercent": "20", "margin": "35", "price": "389.00",
                 "past": [{"kinds": ["gas-furnace"], "planned": 75, "actual": 90, "parts": {"filter": "1"}, "returnMinutes": 20}],
                 "years": 2000, "seed": 1}
                (a "trip" with its cost instead of "shop" and "home"; "overheadAnHour" instead of "overheadPercent"; a part may
                 be named with its size, "filter 16x25x4"; what is left out is named as missing; a margin is a part of the
                 price, not of the cost; "planned" holds the set-up minutes too, "parts" says what of its share of the year's parts a visit
                 gave, "returnMinutes" stands where somebody had to come again; without "past" there is no spread; "needTwo" lists the
                 codes of tasks that need two people)""";
    }

    @Override
    public JsonNode answer(Question question) {
        Currency currency = question.currency();
        PlanYear year = year(question);
        CostRates rates = rates(question, currency);
        Map<String, Money> parts = question.has("parts") ? parts(question.part("parts"), currency) : Map.of();
        PlanCost cost = PlanCost.of(year, rates, part -> one(part, parts), currency);
        ObjectNode answer = Answers.object();
        ArrayNode visits = answer.putArray("visits");
        year.visits().forEach(visit -> visits.add(visit.tasks()));
        PlanCost.Minutes minutes = cost.minutes();
        answer.set(
                "minutes",
                Answers.object()
                        .put("tasks", minutes.tasks())
                        .put("setUp", minutes.setUp())
                        .put("travel", minutes.travel())
                        .put("ready", minutes.ready()));
        ObjectNode causes = answer.putObject("causes");
        for (Cause cause : Cause.values()) {
            causes.put(cause.code(), cost.of(cause).decimal());
        }
        answer.put("cost", cost.total().decimal());
        ArrayNode missing = answer.putArray("missing");
        cost.missing().forEach(one -> missing.add((code(one.what()) + " " + one.part()).strip()));
        if (question.has("margin")) {
            BigDecimal margin = question.decimal("margin");
            answer.put(
                    "priceForMargin", cost.priceFor(margin).map(Money::decimal).orElse(null));
        }
        if (question.has("price")) {
            Money price = question.money("price", currency);
            answer.put("left", price.minus(cost.total()).decimal());
            answer.put(
                    "marginOfPrice",
                    Margin.of(price, cost.total())
                            .map(BigDecimal::toPlainString)
                            .orElse(null));
        }
        if (question.has("past")) {
            answer.set("spread", spread(question, year, rates, parts, currency));
        }
        return answer.put("currency", currency.getCurrencyCode());
    }

    private static String code(PlanCost.What what) {
        return what.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Optional<Money> one(PlanYear.Part part, Map<String, Money> parts) {
        Money kind = parts.get(part.kind());
        return Optional.ofNullable(
                part.size() == null ? kind : parts.getOrDefault(part.kind() + " " + part.size(), kind));
    }

    private static PlanYear year(Question question) {
        Catalogue catalogue = Catalogue.shipped();
        Term term = question.term("term");
        SeasonRules rules = WindowsRule.rules(question);
        LongestVisit longest =
                question.has("minutesAtMost") ? new LongestVisit(question.number("minutesAtMost")) : LongestVisit.ANY;
        List<Machine> machines = new ArrayList<>();
        List<PromisedTask> tasks = new ArrayList<>();
        for (Question part : question.parts("equipment")) {
            String name = part.text("name", part.text("kind")) + " " + machines.size();
            Machine machine = new Machine(
                    UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)),
                    part.text("kind"),
                    part.words("fits"));
            machines.add(machine);
            Set<String> chosen = Set.copyOf(part.texts("tasks"));
            catalogue.tasksFor(machine.kind(), machine.fits()).stream()
                    .filter(task -> chosen.isEmpty() || chosen.contains(task.code()))
                    .forEach(task -> tasks.add(PromisedTask.of(machine.id(), task, History.NONE)));
        }
        VisitPlan plan = VisitPlan.of(
                Promises.in(term, tasks, rules), question.number("visits"), term, List.of(), rules, longest);
        Map<String, BigDecimal> given = question.has("given") ? amounts(question.part("given")) : Map.of();
        return PlanYear.of(
                plan,
                machines,
                given,
                question.number("readyMinutes", 0),
                Set.copyOf(question.texts("needTwo")),
                catalogue);
    }

    private static Map<String, BigDecimal> amounts(Question given) {
        Map<String, BigDecimal> amounts = new HashMap<>();
        given.json().fieldNames().forEachRemaining(kind -> amounts.put(kind, given.decimal(kind)));
        return amounts;
    }

    private static Map<String, Money> parts(Question parts, Currency currency) {
        Map<String, Money> costs = new HashMap<>();
        parts.json().fieldNames().forEachRemaining(kind -> costs.put(kind, parts.money(kind, currency)));
        return costs;
    }

    private static CostRates rates(Question question, Currency currency) {
        Overhead overhead = question.has("overheadPercent")
                ? new Overhead.Percent(question.decimal("overheadPercent"))
                : question.has("overheadAnHour")
                        ? new Overhead.AnHour(question.money("overheadAnHour", currency))
                        : null;
        return new CostRates(
                question.has("hour") ? question.money("hour", currency) : null,
                question.has("setUpMinutes") ? question.number("setUpMinutes") : null,
                trip(question, currency),
                overhead);
    }

    private static Trip trip(Question question, Currency currency) {
        if (question.has("shop") && question.has("home")) {
            return Trip.between(place(question.part("shop")), place(question.part("home")), AsTheCrowFlies.USUAL);
        }
        return question.has("trip") ? new Trip.Priced(question.money("trip", currency)) : new Trip.Unknown();
    }

    private static Travel.Place place(Question place) {
        return new Travel.Place(
                place.decimal("latitude").doubleValue(),
                place.decimal("longitude").doubleValue());
    }

    private static ObjectNode spread(
            Question question, PlanYear year, CostRates rates, Map<String, Money> parts, Currency currency) {
        List<CostSpread.Past> past = question.parts("past").stream()
                .map(one -> new CostSpread.Past(
                        one.texts("kinds").stream().collect(Collectors.toSet()),
                        one.number("planned"),
                        one.number("actual"),
                        one.has("parts") ? amounts(one.part("parts")) : Map.of(),
                        one.has("returnMinutes") ? one.number("returnMinutes") : null))
                .toList();
        int years = question.number("years", 2000);
        if (years > 100_000) {
            throw new IllegalArgumentException("years must be at most 100000, not " + years + ".");
        }
        CostSpread spread =
                CostSpread.of(year, rates, part -> one(part, parts), currency, past, years, question.number("seed", 1));
        ObjectNode said = Answers.object()
                .put("low", spread.low().decimal())
                .put("middle", spread.middle().decimal())
                .put("high", spread.high().decimal())
                .put("visits", spread.visits())
                .put("restsOnLittle", spread.restsOnLittle());
        ArrayNode few = said.putArray("few");
        spread.few().forEach(few::add);
        return said;
    }
}
