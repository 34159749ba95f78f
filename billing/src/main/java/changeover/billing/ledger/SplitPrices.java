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
import org.jspecify.annotations.Nullable;

/**
 * The price book's answers when a plan's price is split: the price on the first day of the term, or the first one after it; of
 * several parts of a kind the one that costs least.
 */
record SplitPrices(List<Entry> entries, Currency currency) {

    /** @param kind the kind of part as plans name it; empty for an hour of labour */
    record Entry(String kind, String item, LocalDate from, long minor) {}

    private static final String PRICES = """
            select p.item_code, p.valid_from, p.price_minor, case when p.item_kind = 'part' then coalesce(t.fits_key, p.item_code)
                   else '' end
              from price p
              left join part t on t.tenant_id = p.tenant_id and t.code = p.item_code and p.item_kind = 'part'
             where p.item_kind = 'part' or (p.item_kind = 'labour' and p.item_code = 'hour')""";

    static SplitPrices of(Connection connection, Currency currency) throws SQLException {
        List<Entry> entries = new ArrayList<>();
        try (PreparedStatement select = connection.prepareStatement(PRICES);
                ResultSet row = select.executeQuery()) {
            while (row.next()) {
                String kind = row.getString(4);
                Entry entry = new Entry(kind, row.getString(1), row.getObject(2, LocalDate.class), row.getLong(3));
                entries.add(entry);
                if (!kind.isEmpty() && !kind.equals(entry.item())) {
                    entries.add(new Entry(entry.item(), entry.item(), entry.from(), entry.minor()));
                }
            }
        }
        return new SplitPrices(List.copyOf(entries), currency);
    }

    @Nullable
    Money hour(LocalDate day) {
        return parts(day).get("");
    }

    /** By kind; the hour of labour stands under the empty one. */
    Map<String, Money> parts(LocalDate day) {
        Map<String, Map<String, List<Entry>>> byItem = new HashMap<>();
        entries.forEach(entry -> byItem.computeIfAbsent(entry.kind(), one -> new HashMap<>())
                .computeIfAbsent(entry.item(), one -> new ArrayList<>())
                .add(entry));
        Map<String, Money> prices = new HashMap<>();
        byItem.forEach((kind, items) -> items.values().stream()
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
