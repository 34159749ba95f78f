package changeover.web.office;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Kind;
import changeover.contracts.plans.PlanFacts;
import changeover.web.session.Typed;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What each further machine of a kind costs a year, beyond those that the plan's own price holds for. */
final class PlanExtras {

    private PlanExtras() {}

    static String price(String kind) {
        return "extra-" + kind;
    }

    static String included(String kind) {
        return "within-" + kind;
    }

    static void fill(Map<String, List<String>> values, PlanFacts facts, Locale locale) {
        for (PlanFacts.Extra extra : facts.extras()) {
            values.put(price(extra.kind()), List.of(PlanForm.plain(extra.price().amount(), locale)));
            values.put(included(extra.kind()), List.of(String.valueOf(extra.included())));
        }
    }

    /** One for each kind with a price; the first machine of a kind is in the plan's own price unless said otherwise. */
    static List<PlanFacts.Extra> read(Typed typed, Catalogue catalogue, Currency currency) {
        var extras = new ArrayList<PlanFacts.Extra>();
        for (Kind kind : catalogue.kinds()) {
            if (typed.line(price(kind.code()), 40) == null) {
                continue;
            }
            int within =
                    typed.line(included(kind.code()), 10) == null ? 1 : typed.whole(included(kind.code()), 0, 1000);
            extras.add(new PlanFacts.Extra(kind.code(), within, typed.money(price(kind.code()), currency)));
        }
        return extras;
    }
}
