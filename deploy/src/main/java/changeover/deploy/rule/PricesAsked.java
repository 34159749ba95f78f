package changeover.deploy.rule;

import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.LabourTerms;
import changeover.billing.pricing.MarkUp;
import changeover.billing.pricing.MarkUps;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceRow;
import changeover.billing.pricing.TravelZone;
import changeover.billing.pricing.TravelZones;
import changeover.billing.pricing.ZoneOfHome;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The price book of a question: prices, mark-ups, how minutes are counted, zones; what has no day holds from ever. */
record PricesAsked(Question question, Currency currency) {

    private static final LocalDate EVER = LocalDate.of(1900, 1, 1);

    PriceBook book() {
        Map<String, String> kinds = new HashMap<>();
        question.parts("parts").forEach(part -> kinds.put(part.text("code"), part.text("kind", part.text("code"))));
        List<PriceRow> rows = question.parts("prices").stream()
                .map(price -> row(price, kinds.get(price.text("code"))))
                .toList();
        MarkUps rules =
                new MarkUps(question.parts("markUps").stream().map(this::markUp).toList());
        return PriceBook.of(rows, rules, terms());
    }

    private PriceRow row(Question price, @Nullable String partKind) {
        return new PriceRow(
                ItemKind.of(price.text("kind")),
                price.text("code"),
                partKind,
                price.has("price") ? price.money("price", currency) : null,
                price.has("cost") ? price.money("cost", currency) : null,
                price.day("from"));
    }

    private MarkUp markUp(Question rule) {
        MarkUp.Scope scope = MarkUp.Scope.of(rule.text("scope"));
        return new MarkUp(
                scope,
                scope == MarkUp.Scope.COST ? "" : rule.text("item"),
                rule.has("costFrom") ? rule.money("costFrom", currency) : Money.zero(currency),
                rule.decimal("percent"),
                rule.has("step") ? rule.money("step", currency) : new Money(1, currency),
                from(rule));
    }

    private List<LabourTerms> terms() {
        if (!question.has("labour")) {
            return List.of();
        }
        Question labour = question.part("labour");
        return List.of(
                new LabourTerms(from(labour), labour.number("stepMinutes", 15), labour.number("minimumMinutes", 0)));
    }

    /** In which of the zones the home lies; empty where the question names none. */
    Optional<ZoneOfHome> zone(LocalDate day) {
        TravelZones zones = new TravelZones(
                question.parts("zones").stream().map(PricesAsked::zone).toList());
        BigDecimal kilometres = question.has("kilometres") ? question.decimal("kilometres") : null;
        return zones.of(day, question.text("postal", ""), kilometres);
    }

    private static TravelZone zone(Question zone) {
        String name = zone.text("name", zone.text("code"));
        return new TravelZone(
                zone.text("code"),
                new Wording(name, zone.text("nameFr", name)),
                zone.texts("postals").stream().map(TravelZone::bare).toList(),
                zone.has("withinKm") ? zone.number("withinKm") : null,
                from(zone),
                false);
    }

    private static LocalDate from(Question dated) {
        return dated.has("from") ? dated.day("from") : EVER;
    }
}
