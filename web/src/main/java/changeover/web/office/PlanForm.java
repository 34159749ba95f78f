package changeover.web.office;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.PartKind;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.web.session.Said;
import changeover.web.session.Typed;
import changeover.web.session.Written;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A plan as it is typed: every field that cannot be so is said at once.
 */
final class PlanForm {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private PlanForm() {}

    /** The field of a part's quantity. */
    static String fieldOf(PartKind part) {
        return "part-" + part.code();
    }

    /** What a new plan begins with. */
    static Said blank() {
        return Said.filled(Map.of("visits", "2", "discountPercent", "0", "instalments", "1", "includedMinutes", "0"));
    }

    static Said filled(PlanFacts facts, Locale locale) {
        Map<String, List<String>> values = new LinkedHashMap<>();
        values.put("code", List.of(facts.code()));
        values.put("nameEn", List.of(facts.name().en()));
        values.put("nameFr", List.of(facts.name().fr()));
        values.put("visits", List.of(String.valueOf(facts.visits())));
        values.put("price", List.of(Written.of(facts.price(), locale)));
        values.put("discountPercent", List.of(plain(facts.discountPercent(), locale)));
        values.put("instalments", List.of(String.valueOf(facts.instalments())));
        values.put("includedMinutes", List.of(String.valueOf(facts.includedMinutes())));
        values.put("coversRepairs", List.of(facts.coversRepairs() ? "yes" : ""));
        values.put(
                "tasks", facts.tasks().stream().map(PlanFacts.Promise::taskCode).toList());
        facts.tasks().forEach(promise -> PlanRhythm.fill(values, promise.taskCode(), promise.cadence()));
        PlanExtras.fill(values, facts, locale);
        facts.parts()
                .forEach(part -> values.put("part-" + part.partKind(), List.of(plain(part.quantityAYear(), locale))));
        return new Said(values, Map.of(), List.of());
    }

    /**
     * @param before the plan as it stands, null for a new one
     * @throws changeover.contracts.words.Refused with a sentence for each field
     */
    static PlanFacts facts(Typed typed, Catalogue catalogue, Currency currency, @Nullable PlanFacts before) {
        var facts = new PlanFacts(
                line(typed, "code", 40),
                new Wording(line(typed, "nameEn", 120), line(typed, "nameFr", 120)),
                typed.whole("visits", 0, 24),
                typed.money("price", currency),
                typed.number("discountPercent", BigDecimal.ZERO, HUNDRED),
                typed.whole("instalments", 1, 12),
                typed.whole("includedMinutes", 0, 100_000),
                typed.ticked("coversRepairs"),
                promises(typed, catalogue, before),
                parts(typed, catalogue),
                PlanExtras.read(typed, catalogue, currency));
        facts.refusals().forEach(typed::refuse);
        typed.understood();
        return facts;
    }

    private static List<PlanFacts.Promise> promises(Typed typed, Catalogue catalogue, @Nullable PlanFacts before) {
        var kept = new LinkedHashMap<String, PlanFacts.Promise>();
        if (before != null) {
            before.tasks().forEach(promise -> kept.put(promise.taskCode(), promise));
        }
        var promises = new ArrayList<PlanFacts.Promise>();
        for (String code : typed.each("tasks").stream().distinct().toList()) {
            if (catalogue.findTask(code).isEmpty()) {
                typed.refuse(Refusal.of("typed.choose").at("tasks"));
            } else {
                PlanFacts.Promise was = kept.get(code);
                promises.add(
                        new PlanFacts.Promise(code, PlanRhythm.read(typed, code, was == null ? null : was.cadence())));
            }
        }
        return promises;
    }

    private static List<PlanFacts.Included> parts(Typed typed, Catalogue catalogue) {
        var included = new ArrayList<PlanFacts.Included>();
        for (PartKind part : catalogue.parts()) {
            BigDecimal quantity = typed.numberOrNone(fieldOf(part), 0, 1000);
            if (quantity == null || quantity.signum() == 0) {
                continue;
            }
            if (quantity.stripTrailingZeros().scale() > 2) {
                typed.refuse(Refusal.of("plan.part-quantity", Map.of("part", part.wording()))
                        .at(fieldOf(part)));
            } else {
                included.add(new PlanFacts.Included(part.code(), quantity.stripTrailingZeros()));
            }
        }
        return included;
    }

    private static String line(Typed typed, String field, int most) {
        String line = typed.line(field, most);
        return line == null ? "" : line;
    }

    static String plain(BigDecimal quantity, Locale locale) {
        return Written.of(quantity, locale);
    }
}
