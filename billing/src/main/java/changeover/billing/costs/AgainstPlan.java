package changeover.billing.costs;

import changeover.billing.pricing.CostRates;
import changeover.contracts.money.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What visits took against what was foreseen of them, together for each agreement, plan, technician or kind of machine. A visit
 * to several kinds of machine is shared among them as their tasks were planned, one by two in halves among the two. What was given
 * between visits counts with its parts, and for no kind of machine.
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
            shares(visit, by, book).forEach(one -> lines.merge(one.key(), one, AgainstPlan::plus));
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
            if (key == null) {
                whole(visit, by, book).ifPresent(lines::add);
            } else {
                shares(visit, by, book).stream()
                        .filter(one -> one.key().equals(key))
                        .forEach(lines::add);
            }
        }
        return lines;
    }

    private static Optional<AgainstPlan> whole(KeptVisit visit, By by, CostBook book) {
        return switch (visit.how()) {
            case PLANNED, RETURN -> Optional.of(single(visit, book));
            case SENT -> by == By.KIND ? Optional.empty() : Optional.of(single(visit, book));
            case NO_ACCESS, BESIDE -> Optional.empty();
        };
    }

    /** The visit in the lines that it counts in. */
    private static List<AgainstPlan> shares(KeptVisit visit, By by, CostBook book) {
        return whole(visit, by, book)
                .map(all -> switch (by) {
                    case AGREEMENT ->
                        List.of(all.under(visit.deal().agreementId().toString()));
                    case PLAN -> List.of(all.under(visit.deal().planId().toString()));
                    case TECHNICIAN -> all.byPerson();
                    case KIND -> all.byKind();
                })
                .orElse(List.of());
    }

    private static AgainstPlan single(KeptVisit visit, CostBook book) {
        CostRates rates = book.rates(visit.day(), null);
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
                visit.isTrip() ? 1 : 0,
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

    private static String name(KeptVisit visit) {
        UUID person = visit.technicianId();
        return person == null ? "" : person.toString();
    }

    /** Half for each of two; whoever closed it takes what is left. */
    private List<AgainstPlan> byPerson() {
        KeptVisit.@Nullable Second second = one.second();
        if (second == null) {
            return List.of(under(name(one)));
        }
        AgainstPlan half = share(1, 2).of(one.by(second));
        return List.of(minus(half).under(name(one)), half.under(name(half.one)));
    }

    /** Minutes and parts by each kind's share of the minutes; the last takes what is left, so that none and no cent is lost. */
    private List<AgainstPlan> byKind() {
        List<Map.Entry<String, Integer>> kinds = one.kinds().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .toList();
        int all = kinds.stream().mapToInt(Map.Entry::getValue).sum();
        if (all == 0) {
            return List.of(this);
        }
        List<AgainstPlan> shares = new ArrayList<>();
        AgainstPlan left = this;
        for (int at = 0; at < kinds.size(); at++) {
            AgainstPlan share =
                    at == kinds.size() - 1 ? left : share(kinds.get(at).getValue(), all);
            shares.add(share.under(kinds.get(at).getKey()));
            left = left.minus(share);
        }
        return shares;
    }

    private AgainstPlan share(int part, int all) {
        return new AgainstPlan(
                key,
                one,
                visits,
                returns,
                planned * part / all,
                actual * part / all,
                foreseen.fraction(part, all),
                cost.fraction(part, all),
                partsForeseen.fraction(part, all),
                parts.fraction(part, all),
                whole);
    }

    private AgainstPlan of(KeptVisit visit) {
        return new AgainstPlan(
                key, visit, visits, returns, planned, actual, foreseen, cost, partsForeseen, parts, whole);
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
