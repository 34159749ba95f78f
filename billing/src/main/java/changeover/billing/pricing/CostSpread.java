package changeover.billing.pricing;

import changeover.contracts.money.Money;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;

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
     * @param partsBeyond what the parts given cost above those foreseen; below nought where fewer were used
     * @param returnMinutes of coming again without charge, nought where nobody had to
     * @param returned whether somebody had to
     */
    public record Past(
            Set<String> kinds, int planned, int actual, Money partsBeyond, int returnMinutes, boolean returned) {

        public Past {
            kinds = Set.copyOf(kinds);
            if (planned <= 0) {
                throw new IllegalArgumentException("A visit that was planned with no minutes says nothing.");
            }
        }

        /** Planned minutes as long as they took this time. */
        int took(int minutes) {
            return Math.toIntExact((2L * minutes * actual + planned) / (2L * planned));
        }
    }

    public boolean restsOnLittle() {
        return visits < LITTLE;
    }

    /** @throws IllegalArgumentException without a past, or without a year to live */
    public static CostSpread of(PlanYear year, PlanCost plan, CostRates rates, List<Past> past, int years, long seed) {
        if (past.isEmpty() || years < 1) {
            throw new IllegalArgumentException("A spread needs at least one closed visit and one year.");
        }
        var lived = new Lived(year, plan, rates, past, new SplittableRandom(seed));
        long[] costs = new long[years];
        for (int one = 0; one < years; one++) {
            costs[one] = lived.once().total().minor();
        }
        Arrays.sort(costs);
        return new CostSpread(
                quantile(costs, 10, plan),
                quantile(costs, 50, plan),
                quantile(costs, 90, plan),
                past.size(),
                years,
                lived.few);
    }

    /** The least cost that so many percent of the years do not exceed. */
    private static Money quantile(long[] sorted, int percent, PlanCost plan) {
        int at = Math.ceilDiv(Math.multiplyExact(sorted.length, percent), 100) - 1;
        return new Money(sorted[Math.max(0, at)], plan.currency());
    }

    /** One year, lived again and again. */
    private static final class Lived {
        private final PlanYear year;
        private final PlanCost plan;
        private final CostRates rates;
        private final List<Past> past;
        private final Map<String, List<Past>> byKind = new TreeMap<>();
        private final SplittableRandom chance;
        private final Set<String> few = new TreeSet<>();

        Lived(PlanYear year, PlanCost plan, CostRates rates, List<Past> past, SplittableRandom chance) {
            this.year = year;
            this.plan = plan;
            this.rates = rates;
            this.past = past;
            this.chance = chance;
            year.visits().forEach(visit -> visit.minutes().keySet().forEach(this::learn));
        }

        private void learn(String kind) {
            List<Past> like =
                    past.stream().filter(one -> one.kinds().contains(kind)).toList();
            if (like.size() < ENOUGH) {
                few.add(kind);
            }
            byKind.put(kind, like.size() < ENOUGH ? past : like);
        }

        PlanCost once() {
            Integer each = rates.setUpMinutes();
            int setUpEach = each == null ? 0 : each;
            int tasks = 0;
            int setUp = 0;
            int trips = 0;
            Money parts = plan.of(Cause.PARTS);
            for (PlanYear.Visit visit : year.visits()) {
                Past leads = drawn(leading(visit));
                trips++;
                setUp += leads.took(setUpEach);
                tasks += minutes(visit, leads);
                parts = parts.plus(leads.partsBeyond());
                if (leads.returned()) {
                    trips++;
                    tasks += leads.returnMinutes();
                }
            }
            return PlanCost.of(
                    new PlanCost.Minutes(
                            tasks,
                            setUp,
                            PlanCost.travel(rates.trip(), trips),
                            plan.minutes().ready()),
                    trips,
                    parts.aboveNought(),
                    rates,
                    List.of());
        }

        /** The kind with the most minutes goes as the visit drawn for it, each other kind as one of its own. */
        private int minutes(PlanYear.Visit visit, Past leads) {
            int sum = 0;
            String leading = leading(visit);
            for (String kind : kinds(visit)) {
                Past as = kind.equals(leading) ? leads : drawn(kind);
                sum += as.took(visit.minutes().getOrDefault(kind, 0));
            }
            return sum;
        }

        private Past drawn(String kind) {
            List<Past> like = byKind.getOrDefault(kind, past);
            return like.get(chance.nextInt(like.size()));
        }

        private static List<String> kinds(PlanYear.Visit visit) {
            List<String> kinds = new ArrayList<>(visit.minutes().keySet());
            kinds.sort(Comparator.comparing((String kind) -> -visit.minutes().getOrDefault(kind, 0))
                    .thenComparing(Comparator.naturalOrder()));
            return kinds;
        }

        private static String leading(PlanYear.Visit visit) {
            return kinds(visit).stream().findFirst().orElse("");
        }
    }
}
