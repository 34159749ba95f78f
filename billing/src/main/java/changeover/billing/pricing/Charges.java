package changeover.billing.pricing;

import changeover.billing.pricing.ClosedVisit.UsedPart;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Every part and minute of a closed visit is included, discounted or billable, and the line says why.
 *
 * <p>A warranty is asked first: a part that its maker, we or the law answer for costs nothing and uses up nothing of the plan; where
 * every part of a visit is one that we or the law answer for, its labour and trip cost nothing either. Then
 * what the plan promised is included; other minutes use up the plan's included ones first; a part is included up to
 * its cap; the rest is billed less the plan's discount. Labour is counted up to the business's step, and a visit that no
 * plan promised has the business's minimum, towards which the plan's minutes count. A return visit for our own work costs
 * nothing. On a call the minutes outside working hours cost their own rate where
 * one is set. A trip costs its zone's fee, else the ordinary one. An item without a price gives a line that waits for one.
 */
public final class Charges {

    private final ClosedVisit visit;
    private final Coverage coverage;
    private final PriceBook prices;
    private final Money nought;
    private final List<Charge> charges = new ArrayList<>();

    private Charges(ClosedVisit visit, Coverage coverage, PriceBook prices, Currency currency) {
        this.visit = visit;
        this.coverage = coverage;
        this.prices = prices;
        this.nought = Money.zero(currency);
    }

    public static List<Charge> of(ClosedVisit visit, Coverage coverage, PriceBook prices, Currency currency) {
        Charges charges = new Charges(visit, coverage, prices, currency);
        if (visit.kind() == VisitKind.RETURN) {
            charges.giveEverything();
        } else {
            charges.promisedWork();
            charges.extraWork();
            charges.parts();
            charges.travel();
        }
        return List.copyOf(charges.charges);
    }

    private void giveEverything() {
        int minutes = visit.promisedMinutes() + visit.extraMinutes();
        if (minutes > 0) {
            give(ItemKind.LABOUR, "promised", null, Reasons.LABOUR, Reasons.RETURN, minutes(minutes), "MIN");
        }
        for (UsedPart part : visit.parts()) {
            Wording why = part.warranty().covers() ? part.warranty().reason() : Reasons.RETURN;
            give(ItemKind.PART, part.code(), null, part.name(), why, part.quantity(), part.unit());
        }
    }

    private void promisedWork() {
        if (visit.promisedMinutes() > 0) {
            give(
                    ItemKind.LABOUR,
                    "promised",
                    null,
                    Reasons.PROMISED,
                    Reasons.promised(coverage),
                    minutes(visit.promisedMinutes()),
                    "MIN");
        }
    }

    /** Whether the visit was for nothing but parts that we or the law answer for. */
    private boolean isGuaranteed() {
        return !visit.parts().isEmpty()
                && visit.parts().stream().allMatch(part -> part.warranty().coversLabour());
    }

    private void extraWork() {
        if (isGuaranteed()) {
            if (visit.extraMinutes() > 0) {
                give(
                        ItemKind.LABOUR,
                        "promised",
                        null,
                        Reasons.LABOUR,
                        Reasons.GUARANTEED,
                        minutes(visit.extraMinutes()),
                        "MIN");
            }
            return;
        }
        int included = Math.min(visit.extraMinutes(), Math.max(coverage.minutes(), 0));
        if (included > 0) {
            give(
                    ItemKind.LABOUR,
                    PriceBook.HOUR,
                    null,
                    Reasons.LABOUR,
                    Reasons.minutes(included, coverage.minutes()),
                    minutes(included),
                    "MIN");
        }
        int rest = visit.extraMinutes() - included;
        if (rest > 0) {
            bill(rest, included);
        }
    }

    private void bill(int rest, int included) {
        LabourTerms terms = prices.termsOn(visit.day());
        Wording before = Reasons.notIncluded(coverage, null);
        int least = visit.kind() == VisitKind.PLAN ? 0 : terms.minimum() - included;
        OutsideHours outside = visit.kind() == VisitKind.CALL ? visit.outside() : OutsideHours.NONE;
        for (LabourRates.Part part : new LabourRates(prices, visit.day()).of(rest, outside, least)) {
            Wording why = LabourReasons.why(part, terms, included, before);
            BigDecimal hours = terms.hours(part.minutes() + part.asked());
            bill(ItemKind.LABOUR, part.item(), null, LabourReasons.words(part.item()), why, hours, "HUR");
        }
    }

    private void parts() {
        Map<String, BigDecimal> usedHere = new HashMap<>();
        for (UsedPart part : visit.parts()) {
            if (part.warranty().covers()) {
                Wording why = part.warranty().reason();
                give(ItemKind.PART, part.code(), null, part.name(), why, part.quantity(), part.unit());
                continue;
            }
            BigDecimal before = usedHere.getOrDefault(part.kind(), BigDecimal.ZERO);
            BigDecimal left = coverage.leftOf(part.kind()).subtract(before).max(BigDecimal.ZERO);
            BigDecimal included = part.quantity().min(left);
            Coverage.Cap cap = coverage.parts().get(part.kind());
            if (included.signum() > 0 && cap != null) {
                Coverage.Cap now = new Coverage.Cap(cap.cap(), left);
                give(ItemKind.PART, part.code(), part.kind(), part.name(), Reasons.part(now), included, part.unit());
                usedHere.merge(part.kind(), included, BigDecimal::add);
            }
            BigDecimal rest = part.quantity().subtract(included);
            if (rest.signum() > 0) {
                Wording why = part.warranty().before(Reasons.notIncluded(coverage, cap));
                bill(ItemKind.PART, part.code(), part.kind(), part.name(), why, rest, part.unit());
            }
        }
    }

    /** A trip that the plan did not promise costs the fee of its zone, else the ordinary one, where the business asks one. */
    private void travel() {
        if (visit.kind() == VisitKind.PLAN || isGuaranteed()) {
            return;
        }
        ZoneOfHome home = visit.zone();
        TravelZone zone = home == null ? null : home.zone();
        Wording why = Reasons.notIncluded(coverage, null);
        if (home != null && zone != null && isAsked(zone.code())) {
            trip(zone.code(), Reasons.both(home.how(), why));
        } else if (isAsked(PriceBook.VISIT)) {
            Wording how = home == null ? null : zone == null ? home.how() : ZoneReasons.unpriced(zone.name());
            trip(PriceBook.VISIT, how == null ? why : Reasons.both(how, why));
        }
    }

    private boolean isAsked(String trip) {
        return prices.on(ItemKind.TRAVEL, trip, visit.day()).isPresent();
    }

    private void trip(String item, Wording why) {
        bill(ItemKind.TRAVEL, item, null, Reasons.TRAVEL, why, BigDecimal.ONE, "C62");
    }

    private void give(
            ItemKind kind,
            String item,
            @Nullable String partKind,
            Wording words,
            Wording why,
            BigDecimal quantity,
            String unit) {
        charges.add(Charge.included(kind, item, partKind, words, why, quantity, unit, nought));
    }

    private void bill(
            ItemKind kind,
            String item,
            @Nullable String partKind,
            Wording words,
            Wording why,
            BigDecimal quantity,
            String unit) {
        Money price = prices.on(kind, item, visit.day()).map(PriceEntry::price).orElse(null);
        charges.add(Charge.payable(
                kind, item, partKind, words, why, quantity, unit, price, coverage.discountPercent(), nought));
    }

    private static BigDecimal minutes(int minutes) {
        return BigDecimal.valueOf(minutes);
    }
}
