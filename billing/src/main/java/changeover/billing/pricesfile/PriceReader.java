package changeover.billing.pricesfile;

import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.MarkUps;
import changeover.billing.pricing.PriceRow;
import changeover.contracts.money.Money;
import changeover.contracts.words.OurAge;
import changeover.contracts.words.Refusal;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Judges the rows of a price file, each by itself: what is understood becomes a price, the rest says why not. */
final class PriceReader {

    /** What a business may price, its part's kind with it; an item that is not there is refused. */
    record Known(Map<PriceRow.Item, String> items, MarkUps rules, Currency currency, LocalDate day) {}

    /**
     * A row that was understood.
     *
     * @param keepsCost the file says nothing of costs, so that what is known of it stays
     */
    record Read(int row, PriceRow price, boolean keepsCost) {}

    private final Known known;
    private final List<PriceFault> faults = new ArrayList<>();
    private final List<Read> read = new ArrayList<>();
    private final Map<String, Integer> seen = new HashMap<>();

    PriceReader(Known known) {
        this.known = known;
    }

    List<Read> read() {
        return read;
    }

    List<PriceFault> faults() {
        return faults;
    }

    void take(PriceLine line) {
        int before = faults.size();
        Optional<ItemKind> kind = kind(line);
        String code = line.cell(Column.ITEM);
        LocalDate from = day(line);
        @Nullable Money price = money(line, Column.PRICE);
        @Nullable Money cost = money(line, Column.COST);
        String currency = line.cell(Column.CURRENCY);
        if (!currency.isEmpty() && !currency.equalsIgnoreCase(known.currency().getCurrencyCode())) {
            refuse(
                    line,
                    Column.CURRENCY,
                    Refusal.of(
                            "pricesfile.currency",
                            Map.of("currency", known.currency().getCurrencyCode())));
        }
        PriceRow.Item item = new PriceRow.Item(kind.orElse(ItemKind.PART), code);
        if (kind.isPresent() && !known.items().containsKey(item)) {
            refuse(line, Column.ITEM, Refusal.of("pricesfile.item-unknown", Map.of("item", shortened(code))));
        }
        if (faults.size() > before) {
            return;
        }
        String partKind = known.items().get(item);
        PriceRow row = new PriceRow(
                item.kind(), code, partKind == null || partKind.isEmpty() ? null : partKind, price, cost, from);
        keep(line, row);
    }

    private void keep(PriceLine line, PriceRow row) {
        Money cost = row.cost();
        if (row.price() == null && (cost == null || row.kind() != ItemKind.PART)) {
            refuse(line, Column.PRICE, Refusal.of("price.or-cost"));
        } else if (row.price() == null
                && cost != null
                && known.rules()
                        .on(row.code(), row.partKind(), cost, row.from())
                        .isEmpty()) {
            refuse(line, Column.PRICE, Refusal.of("price.no-mark-up"));
        } else {
            Integer first = seen.putIfAbsent(row.kind() + " " + row.code() + " " + row.from(), line.row());
            if (first == null) {
                read.add(new Read(line.row(), row, !line.cells().containsKey(Column.COST)));
            } else {
                refuse(line, Column.ITEM, Refusal.of("pricesfile.twice", Map.of("row", first)));
            }
        }
    }

    private Optional<ItemKind> kind(PriceLine line) {
        String kind = line.cell(Column.KIND).toLowerCase(Locale.ROOT);
        for (ItemKind one : ItemKind.values()) {
            if (one.code().equals(kind.isEmpty() ? ItemKind.PART.code() : kind)) {
                return Optional.of(one);
            }
        }
        refuse(line, Column.KIND, Refusal.of("pricesfile.kind"));
        return Optional.empty();
    }

    private LocalDate day(PriceLine line) {
        String day = line.cell(Column.FROM);
        try {
            return day.isEmpty() ? known.day() : OurAge.day(day);
        } catch (DateTimeException notADay) {
            refuse(line, Column.FROM, Refusal.of("pricesfile.day"));
            return known.day();
        }
    }

    private @Nullable Money money(PriceLine line, Column column) {
        String cell = line.cell(column);
        if (cell.isEmpty()) {
            return null;
        }
        Optional<BigDecimal> amount = WrittenAmount.read(cell);
        if (amount.isEmpty() || amount.get().compareTo(Money.MOST) > 0) {
            refuse(
                    line,
                    column,
                    Refusal.of(
                            WrittenAmount.isTwofold(cell) ? "pricesfile.twofold" : "pricesfile.amount",
                            Map.of("said", shortened(cell))));
            return null;
        }
        return Money.rounded(amount.get(), known.currency());
    }

    private void refuse(PriceLine line, Column column, Refusal why) {
        refuse(line.row(), column, why);
    }

    /** For what only the book can say of a row. */
    void refuse(int row, Column column, Refusal why) {
        faults.add(new PriceFault(row, column.title(), why));
    }

    private static String shortened(String said) {
        return said.length() > 40 ? said.substring(0, 40) : said;
    }
}
