package changeover.web.office;

import changeover.billing.pricing.MarkUp;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.catalogue.PartKind;
import changeover.contracts.words.Wording;
import changeover.scheduling.stock.Parts;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** A mark-up rule in a few words. */
@ApplicationScoped
class MarkUpsInWords {

    @Inject
    OwnCatalogue trade;

    @Inject
    Parts parts;

    /** {@code its cost + 110%, to the nearest $0.05 (kind: filter)}. */
    String of(MarkUp rule, Locale locale) {
        return price(rule, locale) + " (" + whom(rule, locale) + ")";
    }

    /** The same without whom it is for. */
    String price(MarkUp rule, Locale locale) {
        BigDecimal percent = rule.percent();
        if (percent == null) {
            return new Wording("ended", "terminée").in(locale);
        }
        String step = rule.step().format(locale);
        return new Wording(
                        "its cost + " + plain(percent) + "%, to the nearest " + step,
                        "son coût + " + plain(percent).replace('.', ',') + "\u00a0%, à " + step + " près")
                .in(locale);
    }

    /** Whom the rule is for: a part, a kind of part, parts that cost at least so much. */
    String whom(MarkUp rule, Locale locale) {
        return switch (rule.scope()) {
            case PART ->
                parts.everKnown(rule.item()).map(part -> part.name().in(locale)).orElse(rule.item());
            case KIND -> new Wording("kind: ", "sorte\u00a0: ").in(locale) + kind(rule.item(), locale);
            case COST ->
                new Wording(
                                "parts that cost " + rule.costFrom().format(locale) + " or more",
                                "pièces qui coûtent " + rule.costFrom().format(locale) + " ou plus")
                        .in(locale);
        };
    }

    private String kind(String code, Locale locale) {
        return trade.catalogue().parts().stream()
                .filter(one -> one.code().equals(code))
                .map(PartKind::wording)
                .findFirst()
                .map(words -> words.in(locale))
                .orElse(code);
    }

    static String plain(@Nullable BigDecimal number) {
        return number == null ? "" : number.stripTrailingZeros().toPlainString();
    }
}
