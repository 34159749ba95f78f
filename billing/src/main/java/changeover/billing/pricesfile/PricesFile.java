package changeover.billing.pricesfile;

import changeover.billing.periods.Periods;
import changeover.billing.pricing.ItemKind;
import changeover.billing.pricing.PriceBook;
import changeover.billing.pricing.PriceRow;
import changeover.billing.pricing.Prices;
import changeover.billing.pricing.PricingRules;
import changeover.billing.pricing.TravelZone;
import changeover.billing.pricing.Zones;
import changeover.contracts.money.Money;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.CsvTable;
import changeover.contracts.words.Refusal;
import changeover.scheduling.stock.KnownPart;
import changeover.scheduling.stock.Parts;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The price file: everything that was written of prices goes out, and comes in again after a look at what it changes. */
@ApplicationScoped
public class PricesFile {

    @Inject
    Prices prices;

    @Inject
    PricingRules rules;

    @Inject
    Zones zones;

    @Inject
    Parts parts;

    @Inject
    Businesses businesses;

    @Inject
    Periods periods;

    /**
     * What was done with the file, or in a dry run would be.
     *
     * @param written how many prices went into the book
     */
    public record Outcome(List<PriceChange> changes, List<PriceFault> faults, int written) {

        public long count(PriceChange.What what) {
            return changes.stream().filter(change -> change.what() == what).count();
        }

        /** Alike for the same changes only: what a person saw is what is done. */
        public String seen() {
            return Integer.toHexString(changes.toString().hashCode());
        }
    }

    /**
     * @param day the first day of rows that name none
     * @param dry nothing is written
     * @param onlyWhole with a single refused row nothing is written; else the others are
     * @throws changeover.contracts.words.Refused when the file as a whole cannot be read
     */
    public Outcome bring(byte[] file, LocalDate day, boolean dry, boolean onlyWhole) {
        List<PriceRow> written = prices.written();
        PriceReader reader = new PriceReader(known(written, day));
        PricesCsv.read(file).forEach(reader::take);
        List<PriceChange> changes = open(PriceChange.of(written, reader.read()), reader);
        boolean write = !dry && (reader.faults().isEmpty() || !onlyWhole);
        List<PriceRow> rows = changes.stream()
                .filter(change -> change.what() != PriceChange.What.UNCHANGED)
                .map(PriceChange::now)
                .toList();
        if (write) {
            prices.writeAll(rows);
        }
        return new Outcome(changes, List.copyOf(reader.faults()), write ? rows.size() : 0);
    }

    /** What closed days would hear of is refused row by row; what says what holds already changes nothing and stays. */
    private List<PriceChange> open(List<PriceChange> changes, PriceReader reader) {
        Optional<LocalDate> closed = periods.closedUntil();
        Predicate<PriceChange> late = change -> change.what() != PriceChange.What.UNCHANGED
                && closed.filter(until -> !change.now().from().isAfter(until)).isPresent();
        changes.stream()
                .filter(late)
                .forEach(change -> periods.refusal(change.now().from())
                        .ifPresent(why -> reader.refuse(change.row(), Column.FROM, why)));
        Set<PriceRow.Item> charged = prices.charged(changes.stream()
                .filter(change -> change.what() != PriceChange.What.UNCHANGED)
                .map(PriceChange::now)
                .toList());
        Predicate<PriceChange> stays = change -> change.what() != PriceChange.What.UNCHANGED
                && charged.contains(change.now().item());
        changes.stream()
                .filter(stays)
                .forEach(change -> reader.refuse(change.row(), Column.FROM, Refusal.of("price.charged")));
        return changes.stream().filter(late.or(stays).negate()).toList();
    }

    /** The file's titles. */
    public static String columns() {
        return Arrays.stream(Column.values()).map(Column::title).collect(Collectors.joining(", "));
    }

    /** In a fixed order; a row that says what holds already is left out, so that the file brought in gives itself again. */
    public byte[] take() {
        Map<String, KnownPart> names = parts.all().stream().collect(Collectors.toMap(KnownPart::code, part -> part));
        CsvTable table =
                new CsvTable(Arrays.stream(Column.values()).map(Column::title).toArray(String[]::new));
        PriceRow before = null;
        for (PriceRow row : prices.written()) {
            if (before == null || !before.item().equals(row.item()) || !PriceChange.saysTheSame(before, row)) {
                KnownPart part = row.kind() == ItemKind.PART ? names.get(row.code()) : null;
                table.row(
                        row.kind().code(),
                        row.code(),
                        part == null ? "" : part.name().in(businesses.current().locale()),
                        part == null ? "" : part.unit(),
                        row.from(),
                        amount(row.price()),
                        amount(row.cost()),
                        businesses.current().currency().getCurrencyCode());
            }
            before = row;
        }
        return table.bytes();
    }

    private static @Nullable BigDecimal amount(@Nullable Money money) {
        return money == null ? null : money.amount();
    }

    /** What is carried, and what had a price already, though it is carried no more. */
    private PriceReader.Known known(List<PriceRow> written, LocalDate day) {
        Map<PriceRow.Item, String> items = new HashMap<>();
        written.forEach(row -> items.put(row.item(), row.partKind() == null ? "" : row.partKind()));
        parts.all()
                .forEach(part -> items.put(
                        new PriceRow.Item(ItemKind.PART, part.code()), part.kind() == null ? "" : part.kind()));
        PriceBook.LABOUR.forEach(code -> items.put(new PriceRow.Item(ItemKind.LABOUR, code), ""));
        List.of(PriceBook.VISIT, PriceBook.NO_ACCESS)
                .forEach(code -> items.put(new PriceRow.Item(ItemKind.TRAVEL, code), ""));
        zones.all().zones().stream()
                .map(TravelZone::code)
                .forEach(code -> items.put(new PriceRow.Item(ItemKind.TRAVEL, code), ""));
        return new PriceReader.Known(
                items, rules.markUps(), businesses.current().currency(), day);
    }
}
