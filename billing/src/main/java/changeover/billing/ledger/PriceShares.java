package changeover.billing.ledger;

import changeover.contracts.money.Money;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A plan's price belongs to its promises in proportion to what each would cost alone (IFRS 15, paragraphs 73 to 82): every
 * share is rounded half-up, the last takes what is left, and what costs nothing alone gets nothing.
 */
final class PriceShares {

    private PriceShares() {}

    /** @return the shares in the order of the promises; their sum is the price */
    static List<Money> of(Money price, List<Promised> promised, List<SoldTogether> together) {
        Map<String, SoldTogether> bundles = bundles(promised, together);
        Map<Object, List<Promised>> groups = new LinkedHashMap<>();
        for (Promised one : promised) {
            Object group = bundles.containsKey(one.name()) ? bundles.get(one.name()) : one.name();
            groups.computeIfAbsent(group, some -> new ArrayList<>()).add(one);
        }
        List<Money> weights = groups.entrySet().stream()
                .map(group -> group.getKey() instanceof SoldTogether bundle
                        ? bundle.price()
                        : group.getValue().getFirst().alone())
                .toList();
        List<Money> ofGroups = inProportion(price, weights);
        Map<String, Money> shares = new HashMap<>();
        int index = 0;
        for (List<Promised> group : groups.values()) {
            List<Money> inside = inProportion(
                    ofGroups.get(index++), group.stream().map(Promised::alone).toList());
            for (int at = 0; at < group.size(); at++) {
                shares.put(group.get(at).name(), inside.get(at));
            }
        }
        return promised.stream()
                .map(one -> shares.getOrDefault(one.name(), Money.zero(price.currency())))
                .toList();
    }

    private static List<Money> inProportion(Money whole, List<Money> weights) {
        List<Money> priced = weights.stream().filter(Money::isPositive).toList();
        Money nought = Money.zero(whole.currency());
        if (priced.isEmpty()) {
            if (whole.isZero()) {
                return weights.stream().map(weight -> nought).toList();
            }
            throw new IllegalArgumentException("At least one promise must cost something alone.");
        }
        List<Money> shares =
                new ArrayList<>(whole.shares(priced.stream().map(Money::amount).toList()));
        return weights.stream()
                .map(weight -> weight.isPositive() ? shares.removeFirst() : nought)
                .toList();
    }

    private static Map<String, SoldTogether> bundles(List<Promised> promised, List<SoldTogether> together) {
        List<String> names = promised.stream().map(Promised::name).toList();
        Map<String, SoldTogether> bundles = new HashMap<>();
        for (SoldTogether bundle : together) {
            for (String name : bundle.names()) {
                if (!names.contains(name)) {
                    throw new IllegalArgumentException("Nothing called " + name + " is promised.");
                }
                if (bundles.put(name, bundle) != null) {
                    throw new IllegalArgumentException(name + " is sold together with others only once.");
                }
            }
        }
        return bundles;
    }
}
