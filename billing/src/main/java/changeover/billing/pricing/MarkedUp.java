package changeover.billing.pricing;

import changeover.contracts.money.Money;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What was written becomes prices with a first day: a written price is one; a cost becomes one on its own day and another on
 * each day its rule changes, until something else is written for the part. Where no rule is for it, the price before holds on.
 */
final class MarkedUp {

    private final MarkUps rules;

    private MarkedUp(MarkUps rules) {
        this.rules = rules;
    }

    static List<PriceEntry> entries(List<PriceRow> rows, MarkUps rules) {
        Map<PriceRow.Item, List<PriceRow>> items = new LinkedHashMap<>();
        rows.forEach(
                row -> items.computeIfAbsent(row.item(), _ -> new ArrayList<>()).add(row));
        MarkedUp prices = new MarkedUp(rules);
        return items.values().stream()
                .map(prices::ofOne)
                .flatMap(Collection::stream)
                .toList();
    }

    private List<PriceEntry> ofOne(List<PriceRow> written) {
        written.sort(Comparator.comparing(PriceRow::from));
        List<PriceEntry> entries = new ArrayList<>();
        for (int at = 0; at < written.size(); at++) {
            PriceRow row = written.get(at);
            if (row.price() != null) {
                entries.add(new PriceEntry(row.kind(), row.code(), row.price(), row.cost(), row.from()));
            } else {
                marked(
                        row,
                        at + 1 == written.size() ? null : written.get(at + 1).from(),
                        entries);
            }
        }
        return entries;
    }

    private void marked(PriceRow row, @Nullable LocalDate until, List<PriceEntry> entries) {
        Money cost = row.cost();
        if (cost == null) {
            return;
        }
        Stream.concat(Stream.of(row.from()), rules.days().filter(day -> day.isAfter(row.from())))
                .filter(day -> until == null || day.isBefore(until))
                .sorted()
                .forEach(day -> {
                    Optional<MarkUp> rule = rules.on(row.code(), row.partKind(), cost, day);
                    boolean same = !entries.isEmpty()
                            && rule.equals(Optional.ofNullable(entries.getLast().by()))
                            && cost.equals(entries.getLast().cost());
                    BigDecimal percent = rule.map(MarkUp::percent).orElse(null);
                    if (percent != null && !same) {
                        Money price = rule.get().price(cost, percent);
                        entries.add(new PriceEntry(row.kind(), row.code(), price, cost, day, rule.get()));
                    }
                });
    }
}
