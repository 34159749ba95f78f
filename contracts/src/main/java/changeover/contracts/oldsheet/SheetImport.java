package changeover.contracts.oldsheet;

import changeover.contracts.agreements.TakenOverAgreements;
import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.money.Money;
import changeover.contracts.plans.Plan;
import changeover.contracts.plans.Plans;
import changeover.contracts.takeover.OwedFromBeforeTold;
import changeover.contracts.takeover.TakeOver;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.CsvTable;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refusals;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * An old spreadsheet is looked at as often as one likes and then brought: its good lines become homes with their machines
 * and agreements, its bad ones are given back to be mended. A home that is here already is left as it is, so that the
 * same file, or a mended one, is brought again without anything twice.
 */
@ApplicationScoped
public class SheetImport {

    @Inject
    OldSheets sheets;

    @Inject
    SheetRows rows;

    @Inject
    OwnCatalogue trade;

    @Inject
    Plans plans;

    @Inject
    TakeOver takeOver;

    @Inject
    TakenOverAgreements agreements;

    @Inject
    Businesses businesses;

    @Inject
    Event<OwedFromBeforeTold> told;

    /**
     * A file as it is read now.
     *
     * @param here the keys of its homes that are in the register already
     */
    public record Looked(SheetTable table, SheetReading reading, SheetLook look, Set<String> here, LocalDate day) {

        /** What would be written. */
        public List<OldHome> fresh() {
            return look.homes().stream()
                    .filter(home -> !here.contains(home.where().key()))
                    .toList();
        }

        public int agreements() {
            return (int)
                    fresh().stream().filter(home -> home.agreement() != null).count();
        }

        public int units() {
            return fresh().stream().mapToInt(home -> home.units().size()).sum();
        }

        /** The first, a middle and the last good row, or of all while none is good, for a person to compare with what is read of them. */
        public List<SheetTable.Row> three() {
            Set<Integer> bad = look.badRows();
            List<SheetTable.Row> good = table.rows().stream()
                    .filter(row -> !bad.contains(row.number()))
                    .toList();
            List<SheetTable.Row> all = good.isEmpty() ? table.rows() : good;
            return Stream.of(0, all.size() / 2, all.size() - 1)
                    .distinct()
                    .filter(at -> at >= 0 && at < all.size())
                    .map(all::get)
                    .toList();
        }

        /** A row as it would be read, whatever is wrong with it. */
        public OldHome read(SheetTable.Row row, SheetLook.Ground ground) {
            var cells = new Cells(row, table.titles(), reading.places(table));
            return SheetLook.home(cells, reading, new SheetWords(reading, ground.catalogue(), ground.plans()), ground);
        }
    }

    /** What files are read against today. */
    public SheetLook.Ground ground() {
        Business business = businesses.current();
        return new SheetLook.Ground(
                trade.catalogue(),
                plans.all().stream().map(Plan::facts).toList(),
                business.country(),
                business.currency(),
                takeOver.dayOrToday());
    }

    public Looked look(SheetTable table, SheetReading reading, SheetLook.Ground ground) {
        SheetLook look = SheetLook.of(table, reading, ground);
        return new Looked(table, reading, look, rows.here(look.homes()), ground.takeOver());
    }

    /**
     * Brings the good lines, or all of them or none.
     *
     * @return how many homes are new
     */
    public int bring(UUID id, boolean goodOnly) {
        sheets.hold(id);
        SheetTable table = sheets.table(id)
                .orElseThrow(() -> Refusal.of("oldsheet.forgotten").thrown());
        if (!sheets.one(id).orElseThrow().named()) {
            throw Refusal.of("oldsheet.not-named").thrown();
        }
        SheetLook.Ground ground = ground();
        Looked looked = look(table, sheets.reading(id, table), ground);
        if (!goodOnly && !looked.look().faults().isEmpty()) {
            throw Refusal.of(
                            "oldsheet.bad-rows",
                            Map.of("count", looked.look().badRows().size()))
                    .thrown();
        }
        takeOver.on(ground.takeOver());
        Map<String, UUID> ids = rows.write(looked.fresh(), names(ground.catalogue()), ground.takeOver());
        List<TakenOverAgreements.InForce> running = looked.fresh().stream()
                .filter(home ->
                        home.agreement() != null && ids.containsKey(home.where().key()))
                .map(home -> inForce(home, ids, looked.reading().asksTheRest()))
                .toList();
        agreements.takeOver(running, ground.takeOver());
        owed(looked.fresh().stream()
                .filter(home -> ids.containsKey(home.where().key()))
                .toList());
        sheets.brought(id);
        return ids.size();
    }

    private void owed(List<OldHome> homes) {
        List<OldHome> owing = homes.stream().filter(home -> home.owed() != null).toList();
        if (owing.isEmpty()) {
            return;
        }
        Map<String, UUID> customers =
                rows.customersOf(owing.stream().map(home -> home.who().key()).toList());
        List<OwedFromBeforeTold.Debt> debts = new ArrayList<>();
        for (OldHome home : owing) {
            UUID customer = customers.get(home.who().key());
            OldHome.Owed owed = home.owed();
            if (customer != null && owed != null) {
                debts.add(new OwedFromBeforeTold.Debt(customer, owed.amount(), owed.since(), owed.words()));
            }
        }
        told.fire(new OwedFromBeforeTold(debts));
    }

    private static TakenOverAgreements.InForce inForce(OldHome home, Map<String, UUID> ids, boolean asksTheRest) {
        OldHome.Deal deal = Objects.requireNonNull(home.agreement());
        Money price = deal.price();
        Money paid = deal.paid();
        return new TakenOverAgreements.InForce(
                Objects.requireNonNull(ids.get(home.where().key())),
                deal.plan(),
                deal.from(),
                price,
                paid,
                asksTheRest && paid != null ? price.minus(paid) : Money.zero(price.currency()),
                deal.visitsDone(),
                deal.lastVisit());
    }

    private static Map<String, SheetRows.KindName> names(Catalogue catalogue) {
        Map<String, SheetRows.KindName> names = new HashMap<>();
        catalogue
                .kinds()
                .forEach(kind -> names.put(
                        kind.code(),
                        new SheetRows.KindName(
                                kind.wording().en(), kind.wording().fr())));
        return names;
    }

    /** The bad rows as a file of the same columns, with what is wrong behind them; spreadsheets open it as UTF-8. */
    public byte[] badRows(Looked looked, Locale locale) {
        Map<Integer, String> why = looked.look().faults().stream()
                .collect(Collectors.groupingBy(
                        SheetSaid::row, Collectors.mapping(said -> sentence(said, locale), Collectors.joining(" "))));
        List<String> titles = new ArrayList<>(looked.table().titles());
        titles.add(Refusals.sentence(Refusal.of("oldsheet.to-mend"), locale));
        var table = new CsvTable(titles.toArray(String[]::new));
        for (SheetTable.Row row : looked.table().rows()) {
            String wrong = why.get(row.number());
            if (wrong != null) {
                List<Object> cells = new ArrayList<>(row.cells());
                cells.add(wrong);
                table.row(cells.toArray());
            }
        }
        byte[] text = table.bytes();
        byte[] marked = new byte[text.length + 3];
        marked[0] = (byte) 0xEF;
        marked[1] = (byte) 0xBB;
        marked[2] = (byte) 0xBF;
        System.arraycopy(text, 0, marked, 3, text.length);
        return marked;
    }

    private static String sentence(SheetSaid said, Locale locale) {
        String what = Refusals.sentence(said.what(), locale);
        return said.column().isEmpty() ? what : said.column() + ": " + what;
    }
}
