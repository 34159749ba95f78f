package changeover.billing.bank;

import changeover.billing.bank.Matching.Noted;
import changeover.billing.payments.Way;
import changeover.contracts.money.Money;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One line of the bank may be all payments of one way and day, or all that were noted together from one list: a deposit of cheques,
 * the day of the card terminal, a batch of direct debits.
 *
 * <p>Only whole groups are added up, so the search is as long as the payments are many. Where two groups come to the amount, those of
 * the bank's own way go before the others, then the nearest day; two that are as near are none.
 */
final class NotedTogether {

    /** @param at when they were noted; null for all of the day */
    private record Key(Way way, LocalDate day, @Nullable Instant at) {}

    private NotedTogether() {}

    /** @param free payments that belong to no line yet and may lie so near to it */
    static Optional<List<Noted>> of(Collection<Noted> free, BankLine line) {
        LinkedHashSet<List<Noted>> groups = new LinkedHashSet<>();
        groups.addAll(exact(free, line, one -> new Key(one.way(), one.day(), null)));
        groups.addAll(exact(free, line, one -> new Key(one.way(), one.day(), one.at())));
        List<List<Noted>> found = new ArrayList<>(groups);
        if (found.stream().anyMatch(group -> way(group) == line.way())) {
            found.removeIf(group -> way(group) != line.way());
        }
        long nearest =
                found.stream().mapToLong(group -> apart(group, line)).min().orElse(0);
        found.removeIf(group -> apart(group, line) > nearest);
        return found.size() == 1 ? Optional.of(found.getFirst()) : Optional.empty();
    }

    private static List<List<Noted>> exact(Collection<Noted> free, BankLine line, Function<Noted, Key> key) {
        Map<Key, List<Noted>> groups =
                free.stream().collect(Collectors.groupingBy(key, LinkedHashMap::new, Collectors.toList()));
        return groups.values().stream()
                .filter(group -> group.size() > 1 && sum(group, line).equals(line.amount()))
                .toList();
    }

    private static Money sum(List<Noted> group, BankLine line) {
        return Money.sum(
                group.stream().map(Noted::amount).toList(), line.amount().currency());
    }

    private static Way way(List<Noted> group) {
        return group.getFirst().way();
    }

    private static long apart(List<Noted> group, BankLine line) {
        return Math.abs(ChronoUnit.DAYS.between(group.getFirst().day(), line.day()));
    }
}
