package changeover.billing.pricesfile;

import changeover.billing.pricing.PriceRow;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What a row of the file does to the book: new where the item had nothing before its day, changed where it had something
 * else on that day or before it, unchanged where it says what holds already.
 *
 * @param before what held until then, null for a new item
 */
public record PriceChange(
        int row, What what, PriceRow now, @Nullable PriceRow before) {

    public enum What {
        NEW,
        CHANGED,
        UNCHANGED
    }

    /** Judged against the book with the whole file laid over it, so that the order of the rows says nothing. */
    static List<PriceChange> of(List<PriceRow> book, List<PriceReader.Read> file) {
        Map<PriceRow.Item, NavigableMap<java.time.LocalDate, PriceRow>> written = new HashMap<>();
        book.forEach(
                row -> written.computeIfAbsent(row.item(), _ -> new TreeMap<>()).put(row.from(), row));
        List<PriceChange> changes = new ArrayList<>();
        List<PriceReader.Read> byDay = file.stream()
                .sorted(Comparator.comparing(one -> one.price().from()))
                .toList();
        for (PriceReader.Read read : byDay) {
            NavigableMap<java.time.LocalDate, PriceRow> days =
                    written.computeIfAbsent(read.price().item(), _ -> new TreeMap<>());
            var holds = days.floorEntry(read.price().from());
            PriceRow before = holds == null ? null : holds.getValue();
            PriceRow now = before != null && read.keepsCost() ? read.price().costing(before.cost()) : read.price();
            What what = before == null ? What.NEW : saysTheSame(before, now) ? What.UNCHANGED : What.CHANGED;
            changes.add(new PriceChange(read.row(), what, now, before));
            if (what != What.UNCHANGED) {
                days.put(now.from(), now);
            }
        }
        changes.sort(Comparator.comparing(PriceChange::row));
        return List.copyOf(changes);
    }

    static boolean saysTheSame(PriceRow one, PriceRow other) {
        return Objects.equals(one.price(), other.price()) && Objects.equals(one.cost(), other.cost());
    }
}
