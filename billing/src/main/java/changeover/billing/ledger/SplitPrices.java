package changeover.billing.ledger;

import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceEntry;
import changeover.billing.pricing.PriceRows;
import changeover.contracts.money.Money;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The price book's answers when a plan's price is split: the price on the first day of the term, or the first one after it; of
 * several parts of a kind the one that costs least.
 */
final class SplitPrices {

    /** What an hour of labour stands under. */
    static final String HOUR = "";

    private record Entry(LocalDate from, long minor) {}

    /** By the kind of part as plans name it, and by the item of the price book. */
    private final Map<String, Map<String, List<Entry>>> entries = new HashMap<>();

    private final Currency currency;

    private SplitPrices(Currency currency) {
        this.currency = currency;
    }

    static SplitPrices of(Connection connection, Currency currency) throws SQLException {
        SplitPrices prices = new SplitPrices(currency);
        Map<String, String> kinds = kinds(connection);
        for (PriceEntry priced : PriceRows.book(connection).entries()) {
            String item = priced.code();
            Entry entry = new Entry(priced.from(), priced.price().minor());
            if (priced.kind() == ItemKind.PART) {
                String kind = kinds.getOrDefault(item, item);
                prices.add(kind, item, entry);
                if (!kind.equals(item)) {
                    prices.add(item, item, entry);
                }
            } else if (priced.kind() == ItemKind.LABOUR && item.equals(PriceBook.HOUR)) {
                prices.add(HOUR, item, entry);
            }
        }
        return prices;
    }

    private static Map<String, String> kinds(Connection connection) throws SQLException {
        try (PreparedStatement select =
                        connection.prepareStatement("select code, fits_key from part where fits_key is not null");
                ResultSet row = select.executeQuery()) {
            Map<String, String> kinds = new HashMap<>();
            while (row.next()) {
                kinds.put(row.getString(1), row.getString(2));
            }
            return kinds;
        }
    }

    private void add(String kind, String item, Entry entry) {
        entries.computeIfAbsent(kind, one -> new HashMap<>())
                .computeIfAbsent(item, one -> new ArrayList<>())
                .add(entry);
    }

    /** By kind; the hour of labour stands under {@link #HOUR}. */
    Map<String, Money> on(LocalDate day) {
        Map<String, Money> prices = new HashMap<>();
        entries.forEach((kind, items) -> items.values().stream()
                .map(list -> on(list, day))
                .min(Comparator.comparing(Entry::minor))
                .ifPresent(entry -> prices.put(kind, new Money(entry.minor(), currency))));
        return prices;
    }

    private static Entry on(List<Entry> prices, LocalDate day) {
        Optional<Entry> then =
                prices.stream().filter(entry -> !entry.from().isAfter(day)).max(Comparator.comparing(Entry::from));
        return then.orElseGet(
                () -> prices.stream().min(Comparator.comparing(Entry::from)).orElseThrow());
    }
}
