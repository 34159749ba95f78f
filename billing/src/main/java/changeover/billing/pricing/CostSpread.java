package changeover.billing.pricing;

import changeover.billing.pricing.PlanYear.Part;
import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * How far a plan's cost may lie from its plan: the year is lived many times over, each visit going as some visit of the
 * business's own past went, drawn with its like put back. The same seed gives the same answer.
 *
 * @param low one year in ten costs no more; {@code middle} one in two, {@code high} nine in ten
 * @param visits of the past that it rests on
 * @param few kinds of machine of which fewer than {@link #ENOUGH} visits are known: there all visits are drawn from
 */
public record CostSpread(Money low, Money middle, Money high, int visits, int years, Set<String> few) {

    /** So many visits of a kind of machine must be known before the kind is drawn from alone. */
    public static final int ENOUGH = 10;

    /** Fewer visits than this are little to rest a spread on. */
    public static final int LITTLE = 30;

    /**
     * A visit that was closed, against its plan.
     *
     * @param kinds of machine it served
     * @param planned minutes, set-up included; above nought
     * @param actual minutes on what was promised
     * @param parts by kind, what it gave of its share of the year's promise: 1 when it gave its share and no more
     * @param returnMinutes of coming again without charge, or null where nobody had to
     */
    public record Past(
            Set<String> kinds,
            int planned,
            int actual,
            Map<String, BigDecimal> parts,
            @Nullable Integer returnMinutes) {

        public Past {
            kinds = Set.copyOf(kinds);
            parts = Map.copyOf(parts);
            if (planned <= 0) {
                throw new IllegalArgumentException("A visit that was planned with no minutes says nothing.");
            }
        }

        /** Planned minutes as long as they took this time, half-up. */
        int took(int minutes) {
            return Math.toIntExact((2L * minutes * actual + planned) / (2L * planned));
        }
    }

    public CostSpread {
        few = Set.copyOf(few);
    }

    public boolean restsOnLittle() {
        return visits < LITTLE;
    }

    /**
     * @param costs of one of a part on the day
     * @throws IllegalArgumentException without a past, or without a year to live
     */
    public static CostSpread of(
            PlanYear year,
            CostRates rates,
            Function<Part, Optional<Money>> costs,
            Currency currency,
            List<Past> past,
            int years,
            long seed) {
        if (past.isEmpty() || years < 1) {
            throw new IllegalArgumentException("A spread needs at least one closed visit and one year.");
        }
        var lived = new LivedYear(year, rates, costs, currency, past, seed);
        long[] sums = new long[years];
        for (int one = 0; one < years; one++) {
            sums[one] = lived.once().total().minor();
        }
        Arrays.sort(sums);
        return new CostSpread(
                quantile(sums, 10, currency),
                quantile(sums, 50, currency),
                quantile(sums, 90, currency),
                past.size(),
                years,
                lived.few());
    }

    /** The least cost that so many percent of the years do not exceed. */
    private static Money quantile(long[] sorted, int percent, Currency currency) {
        int at = Math.ceilDiv(Math.multiplyExact(sorted.length, percent), 100) - 1;
        return new Money(sorted[Math.max(0, at)], currency);
    }
}
