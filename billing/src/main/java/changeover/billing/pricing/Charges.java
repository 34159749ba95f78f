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
 * <p>A warranty is asked first: a part that its maker, we or the law answer for costs nothing and uses up nothing of the plan. Where
 * we or the law answer for the labour of every part of a visit, its minutes cost nothing but those for other work, and its trip
 * costs nothing where there was none. Then what the plan promised is included; other minutes use up the plan's included ones first; a part is included up to
 * its cap; the rest is billed less the plan's discount. Labour is counted up to the business's step, and a visit that no
 * plan promised has the business's minimum, towards which the plan's minutes count. A return visit for our own work costs
 * nothing. Each person's minutes count, and a minimum once for each. On a call the minutes outside working hours cost their own rate where
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
        Charges charges = new Charges(visit.together(), coverage, prices, currency);
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
            give(ItemKind.LABOUR, "promised", null, Reasons.LABOUR, ofEach(Reasons.RETURN), minutes(minutes), "MIN");
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
                    ofEach(Reasons.promised(coverage)),
                    minutes(visit.promisedMinutes()),
                    "MIN");
        }
    }

    /** Whether we or the law answer for the labour of every part, but for those that the work of the plan asked for. */
    private boolean isGuaranteed() {
        return !warranties().isEmpty() && warranties().stream().allMatch(Warranty::coversLabour);
    }

    private List<Warranty> warranties() {
        return visit.parts().stream()
                .map(UsedPart::warranty)
                .filter(warranty -> visit.kind() != VisitKind.PLAN || warranty.by() != Warranty.By.PLAN)
                .toList();
    }

    /** Minutes that are asked of the plan and then of the price: under guarantee those for other work alone. */
    private int asked() {
        return isGuaranteed() ? Math.min(visit.otherMinutes(), visit.extraMinutes()) : visit.extraMinutes();
    }

    private void extraWork() {
        int guaranteed = visit.extraMinutes() - asked();
        if (guaranteed > 0) {
            give(ItemKind.LABOUR, "promised", null, Reasons.LABOUR, ofEach(guaranteed()), minutes(guaranteed), "MIN");
        }
        if (asked() == 0) {
            return;
        }
        int included = Math.min(asked(), Math.max(coverage.minutes(), 0));
        if (included > 0) {
            give(
                    ItemKind.LABOUR,
                    PriceBook.HOUR,
                    null,
                    Reasons.LABOUR,
                    ofEach(Reasons.minutes(included, coverage.minutes())),
                    minutes(included),
                    "MIN");
        }
        int rest = asked() - included;
        if (rest > 0) {
            bill(rest, included);
        }
    }

    private Wording ofEach(Wording why) {
        return visit.people() == 1 ? why : Reasons.both(why, Reasons.people(visit.people()));
    }

    /** A part's own line says why we or the law answer for it; where its maker gives it, the labour's line must. */
    private Wording guaranteed() {
        return warranties().stream()
                .map(Warranty::labour)
                .map(labour -> labour == null ? Reasons.GUARANTEED : labour)
                .distinct()
                .reduce(Reasons::both)
                .orElse(Reasons.GUARANTEED);
    }

    /** Why something is to be paid for that no line of the plan gives. */
    private Wording charged() {
        Wording before = Reasons.notIncluded(coverage, null);
        return isGuaranteed() ? Reasons.both(Reasons.OTHER_WORK, before) : before;
    }

    private void bill(int rest, int included) {
        LabourTerms terms = prices.termsOn(visit.day());
        Wording before = charged();
        int least = visit.kind() == VisitKind.PLAN ? 0 : visit.people() * terms.minimum() - included;
        OutsideHours outside = visit.kind() == VisitKind.CALL ? visit.outside() : OutsideHours.NONE;
        for (LabourRates.Part part : new LabourRates(prices, visit.day()).of(rest, outside, least)) {
            Wording why = LabourReasons.why(part, terms, visit.people(), included, before);
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
        if (visit.kind() == VisitKind.PLAN || isGuaranteed() && asked() == 0) {
            return;
        }
        ZoneOfHome home = visit.zone();
        TravelZone zone = home == null ? null : home.zone();
        Wording why = charged();
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
