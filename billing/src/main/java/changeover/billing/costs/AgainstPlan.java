package changeover.billing.costs;

import changeover.billing.pricing.CostRates;
import changeover.contracts.money.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What visits took against what was foreseen of them, together for each agreement, plan, technician or kind of machine. A visit
 * to several kinds of machine is shared among them as their tasks were planned.
 *
 * @param key what is counted together: an id, or the code of a kind; empty where nobody knows
 * @param one any visit of them
 * @param returns how many of the visits came again without charge
 * @param planned minutes on site, set-up included
 * @param foreseen cost of those minutes at the costs of their days, and {@code cost} of the actual ones
 * @param partsForeseen their shares of the parts that the agreements give, and {@code parts} those that were given
 * @param whole whether an hour's cost and every part's is known
 */
public record AgainstPlan(
        String key,
        KeptVisit one,
        int visits,
        int returns,
        int planned,
        int actual,
        Money foreseen,
        Money cost,
        Money partsForeseen,
        Money parts,
        boolean whole) {

    /** What is counted together. */
    public enum By {
        AGREEMENT,
        PLAN,
        TECHNICIAN,
        KIND
    }

    /** What went furthest beyond its plan comes first. */
    public static List<AgainstPlan> of(List<KeptVisit> visits, By by, CostBook book) {
        Map<String, AgainstPlan> lines = new LinkedHashMap<>();
        for (KeptVisit visit : visits) {
            if (visit.how() == KeptVisit.How.PLANNED || visit.how() == KeptVisit.How.RETURN) {
                AgainstPlan all = single(visit, book);
                if (by == By.KIND) {
                    all.byKind().forEach(one -> lines.merge(one.key(), one, AgainstPlan::plus));
                } else {
                    lines.merge(key(visit, by), all.under(key(visit, by)), AgainstPlan::plus);
                }
            }
        }
        return lines.values().stream()
                .sorted(Comparator.comparing((AgainstPlan line) -> line.planned - line.actual)
                        .thenComparing((AgainstPlan line) -> line.key))
                .toList();
    }

    /**
     * The visits behind a line, each with its share of it, in the order of their days.
     *
     * @param key of the line; null for all visits, each whole
     */
    public static List<AgainstPlan> behind(List<KeptVisit> visits, By by, @Nullable String key, CostBook book) {
        List<AgainstPlan> lines = new ArrayList<>();
        for (KeptVisit visit : visits) {
            if (visit.how() == KeptVisit.How.PLANNED || visit.how() == KeptVisit.How.RETURN) {
                AgainstPlan all = single(visit, book);
                if (key == null) {
                    lines.add(all);
                } else if (by == By.KIND) {
                    all.byKind().stream().filter(one -> one.key().equals(key)).forEach(lines::add);
                } else if (key(visit, by).equals(key)) {
                    lines.add(all);
                }
            }
        }
        return lines;
    }

    private static String key(KeptVisit visit, By by) {
        return switch (by) {
            case AGREEMENT -> visit.deal().agreementId().toString();
            case PLAN -> visit.deal().planId().toString();
            case TECHNICIAN ->
                visit.technicianId() == null ? "" : visit.technicianId().toString();
            case KIND -> "";
        };
    }

    private static AgainstPlan single(KeptVisit visit, CostBook book) {
        CostRates rates = book.rates(visit.day(), visit.home());
        @Nullable Integer setUp = rates.setUpMinutes();
        int planned = visit.foreseen(setUp == null ? 0 : setUp);
        Money nought = Money.zero(book.currency());
        Money parts = nought;
        boolean whole = rates.hour() != null && setUp != null;
        for (KeptVisit.Given part : visit.parts()) {
            var cost = book.part(part.code(), visit.day());
            whole &= cost.isPresent();
            parts = parts.plus(cost.map(one -> one.times(part.quantity())).orElse(nought));
        }
        Optional<Money> share = visit.partsForeseen(book);
        whole &= share.isPresent();
        Money hour = rates.hour() == null ? nought : rates.hour();
        return new AgainstPlan(
                "",
                visit,
                1,
                visit.how() == KeptVisit.How.RETURN ? 1 : 0,
                planned,
                visit.actual(),
                hour.fraction(planned, 60),
                hour.fraction(visit.actual(), 60),
                share.orElse(nought),
                parts,
                whole);
    }

    private AgainstPlan under(String name) {
        return new AgainstPlan(
                name, one, visits, returns, planned, actual, foreseen, cost, partsForeseen, parts, whole);
    }

    /** Minutes and parts by each kind's share of the minutes; the last takes what is left, so that none and no cent is lost. */
    private List<AgainstPlan> byKind() {
        List<Map.Entry<String, Integer>> kinds = one.kinds().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .toList();
        int whole = kinds.stream().mapToInt(Map.Entry::getValue).sum();
        if (whole == 0) {
            return List.of(this);
        }
        List<AgainstPlan> shares = new ArrayList<>();
        AgainstPlan left = this;
        for (int at = 0; at < kinds.size(); at++) {
            int part = kinds.get(at).getValue();
            AgainstPlan share = at == kinds.size() - 1
                    ? left
                    : new AgainstPlan(
                            "",
                            one,
                            1,
                            returns,
                            planned * part / whole,
                            actual * part / whole,
                            foreseen.fraction(part, whole),
                            cost.fraction(part, whole),
                            partsForeseen.fraction(part, whole),
                            parts.fraction(part, whole),
                            this.whole);
            shares.add(share.under(kinds.get(at).getKey()));
            left = left.minus(share);
        }
        return shares;
    }

    private AgainstPlan plus(AgainstPlan other) {
        return new AgainstPlan(
                key,
                one,
                visits + other.visits,
                returns + other.returns,
                planned + other.planned,
                actual + other.actual,
                foreseen.plus(other.foreseen),
                cost.plus(other.cost),
                partsForeseen.plus(other.partsForeseen),
                parts.plus(other.parts),
                whole && other.whole);
    }

    private AgainstPlan minus(AgainstPlan share) {
        return new AgainstPlan(
                key,
                one,
                visits,
                returns,
                planned - share.planned,
                actual - share.actual,
                foreseen.minus(share.foreseen),
                cost.minus(share.cost),
                partsForeseen.minus(share.partsForeseen),
                parts.minus(share.parts),
                whole);
    }
}
