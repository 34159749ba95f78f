package changeover.billing.ledger;

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

    private static final String PRICES = """
            select p.item_code, p.valid_from, p.price_minor, case when p.item_kind = 'part' then coalesce(t.fits_key, p.item_code)
                   else '' end
              from price p
              left join part t on t.tenant_id = p.tenant_id and t.code = p.item_code and p.item_kind = 'part'
             where p.item_kind = 'part' or (p.item_kind = 'labour' and p.item_code = 'hour')""";

    /** By the kind of part as plans name it, and by the item of the price book. */
    private final Map<String, Map<String, List<Entry>>> entries = new HashMap<>();

    private final Currency currency;

    private SplitPrices(Currency currency) {
        this.currency = currency;
    }

    static SplitPrices of(Connection connection, Currency currency) throws SQLException {
        SplitPrices prices = new SplitPrices(currency);
        try (PreparedStatement select = connection.prepareStatement(PRICES);
                ResultSet row = select.executeQuery()) {
            while (row.next()) {
                String item = row.getString(1);
                String kind = row.getString(4);
                Entry entry = new Entry(row.getObject(2, LocalDate.class), row.getLong(3));
                prices.add(kind, item, entry);
                if (!kind.equals(HOUR) && !kind.equals(item)) {
                    prices.add(item, item, entry);
                }
            }
        }
        return prices;
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
