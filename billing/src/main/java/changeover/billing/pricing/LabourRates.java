package changeover.billing.pricing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * The minutes to be billed, by the rate they have. What the plan gave was used by day first, so what is left is outside the
 * working hours as far as it can be. A kind of hour without a rate of its own has the after-hours rate, and without that the
 * ordinary one.
 */
final class LabourRates {

    /** @param asked minutes that the minimum adds: of a rate's minutes, those that nobody worked */
    record Part(String item, int minutes, int asked) {}

    private final PriceBook prices;
    private final LocalDate day;

    LabourRates(PriceBook prices, LocalDate day) {
        this.prices = prices;
        this.day = day;
    }

    /**
     * @param rest the minutes that no plan gives
     * @param least how many are billed at least; what is missing is asked at the cheapest kind of hour that was worked
     */
    List<Part> of(int rest, OutsideHours outside, int least) {
        int holiday = Math.min(rest, outside.holiday());
        int weekend = Math.min(rest - holiday, outside.weekend());
        int night = Math.min(rest - holiday - weekend, outside.night());
        int[] minutes = new int[PriceBook.LABOUR.size()];
        minutes[PriceBook.LABOUR.indexOf(rate(PriceBook.HOLIDAY))] += holiday;
        minutes[PriceBook.LABOUR.indexOf(rate(PriceBook.WEEKEND))] += weekend;
        minutes[PriceBook.LABOUR.indexOf(rate(PriceBook.AFTER_HOURS))] += night;
        minutes[0] += rest - holiday - weekend - night;
        int missing = Math.max(0, least - rest);
        List<Part> parts = new ArrayList<>();
        for (int at = 0; at < minutes.length; at++) {
            if (minutes[at] > 0) {
                parts.add(new Part(PriceBook.LABOUR.get(at), minutes[at], parts.isEmpty() ? missing : 0));
            }
        }
        return parts;
    }

    private String rate(String item) {
        if (isPriced(item)) {
            return item;
        }
        return isPriced(PriceBook.AFTER_HOURS) ? PriceBook.AFTER_HOURS : PriceBook.HOUR;
    }

    private boolean isPriced(String item) {
        return prices.on(ItemKind.LABOUR, item, day).isPresent();
    }
}
