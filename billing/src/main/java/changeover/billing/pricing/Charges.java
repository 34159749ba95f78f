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
 * <p>What the plan promised is included; other minutes use up the plan's included ones first; a part is included up to
 * its cap; the rest is billed less the plan's discount. Labour is counted up to the next quarter hour. A return visit
 * for our own work costs nothing, nor does a part under its maker's warranty. On a call the minutes outside working hours
 * cost the after-hours rate where one is set. An item without a price gives a line that waits for one.
 */
public final class Charges {

    private static final int QUARTER = 15;

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
            give(ItemKind.PART, part.code(), null, part.name(), Reasons.RETURN, part.quantity(), part.unit());
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

    private void extraWork() {
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
            int night = atNight(rest);
            Wording why = Reasons.notIncluded(coverage, null);
            labour(PriceBook.HOUR, Reasons.LABOUR, Reasons.quarterHours(rest - night, why), rest - night);
            labour(PriceBook.AFTER_HOURS, Reasons.NIGHT_LABOUR, Reasons.nightQuarterHours(night, why), night);
        }
    }

    /** The plan's minutes are used by day first; a call's others outside working hours have their own rate where there is one. */
    private int atNight(int rest) {
        boolean asked = visit.kind() == VisitKind.CALL
                && prices.on(ItemKind.LABOUR, PriceBook.AFTER_HOURS, visit.day())
                        .isPresent();
        return asked ? Math.clamp(visit.nightMinutes(), 0, rest) : 0;
    }

    private void labour(String item, Wording words, Wording why, int minutes) {
        if (minutes > 0) {
            bill(ItemKind.LABOUR, item, null, words, why, hours(minutes), "HUR");
        }
    }

    private void parts() {
        Map<String, BigDecimal> usedHere = new HashMap<>();
        for (UsedPart part : visit.parts()) {
            if (part.warranty()) {
                give(ItemKind.PART, part.code(), null, part.name(), Reasons.WARRANTY, part.quantity(), part.unit());
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
                Wording why = Reasons.notIncluded(coverage, cap);
                bill(ItemKind.PART, part.code(), part.kind(), part.name(), why, rest, part.unit());
            }
        }
    }

    /** A trip that the plan did not promise costs its fee where the business asks one. */
    private void travel() {
        boolean asked = prices.on(ItemKind.TRAVEL, PriceBook.VISIT, visit.day()).isPresent();
        if (visit.kind() != VisitKind.PLAN && asked) {
            Wording why = Reasons.notIncluded(coverage, null);
            bill(ItemKind.TRAVEL, PriceBook.VISIT, null, Reasons.TRAVEL, why, BigDecimal.ONE, "C62");
        }
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

    /** 20 minutes are 0.50, 61 are 1.25. */
    static BigDecimal hours(int minutes) {
        long quarters = (minutes + QUARTER - 1L) / QUARTER;
        return BigDecimal.valueOf(quarters * 25, 2);
    }
}
