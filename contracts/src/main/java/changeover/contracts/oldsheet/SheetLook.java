package changeover.contracts.oldsheet;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.plans.PlanFacts;
import changeover.contracts.words.Folded;
import changeover.contracts.words.Refusal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * A whole file as it would be read: nothing is written. A home that stands twice and says the same is taken once; where
 * it says otherwise, the later line waits to be mended.
 *
 * @param homes the good lines
 * @param faults what keeps lines out, by row
 * @param remarks how something was read that a person may want to know, of good lines only
 * @param twice lines that only repeat another
 * @param kinds words for machines that are not our own, for a person to name: folded, and as they are written
 * @param plans the same of plans
 */
public record SheetLook(
        List<OldHome> homes,
        List<SheetSaid> faults,
        List<SheetSaid> remarks,
        int twice,
        Map<String, String> kinds,
        Map<String, String> plans) {

    /** What a file is read against. */
    public record Ground(
            Catalogue catalogue, Collection<PlanFacts> plans, String country, Currency currency, LocalDate takeOver) {}

    public SheetLook {
        homes = List.copyOf(homes);
        faults = List.copyOf(faults);
        remarks = List.copyOf(remarks);
    }

    public static SheetLook of(SheetTable table, SheetReading reading, Ground ground) {
        var words = new SheetWords(reading, ground.catalogue(), ground.plans());
        Map<SheetField, List<Integer>> places = reading.places(table);
        Map<String, OldHome> homes = new LinkedHashMap<>();
        Map<String, OldHome> people = new HashMap<>();
        var faults = new ArrayList<SheetSaid>();
        var remarks = new ArrayList<SheetSaid>();
        int twice = 0;
        for (SheetTable.Row row : table.rows()) {
            var cells = new Cells(row, table.titles(), places);
            OldHome home = home(cells, reading, words, ground);
            OldHome same = homes.get(home.where().key());
            OldHome known = people.get(home.who().key());
            if (!cells.faults().isEmpty()) {
                faults.addAll(cells.faults());
            } else if (same != null && same.saysTheSame(home)) {
                twice++;
            } else if (same != null) {
                faults.add(said(row, "oldsheet.home-twice", same));
            } else if (known != null && !sameOf(known, home)) {
                faults.add(said(row, "oldsheet.customer-twice", known));
            } else {
                homes.put(home.where().key(), home);
                people.putIfAbsent(home.who().key(), home);
                remarks.addAll(cells.remarks());
            }
        }
        return new SheetLook(
                List.copyOf(homes.values()),
                faults,
                remarks,
                twice,
                foreign(table, places, "KIND", words::isKind),
                foreign(table, places, "PLAN", words::isPlan));
    }

    /** The rows that are kept out. */
    public Set<Integer> badRows() {
        return faults.stream().map(SheetSaid::row).collect(Collectors.toSet());
    }

    /** One row as it would be read, whatever is wrong with it. */
    static OldHome home(Cells cells, SheetReading reading, SheetWords words, Ground ground) {
        var days = new DayReader(cells, reading.order().orElse(null));
        var people = new PeopleReader(cells, reading, ground.country());
        var machines = new MachinesReader(cells, words, days);
        OldHome.Where where = people.where();
        List<OldHome.Unit> units = machines.read();
        OldHome.Deal deal =
                new DealReader(cells, reading, words, days, ground.takeOver(), ground.currency()).read(units);
        OldHome.Owed owed = new OwedReader(cells, days, ground.takeOver(), ground.currency()).read();
        return new OldHome(cells.row(), people.who(where), where, units, machines.toBeRead(), deal, owed);
    }

    /** A customer may have several homes and says the same of themselves on each line, as far as it says anything. */
    private static boolean sameOf(OldHome known, OldHome home) {
        String one = known.who().email();
        String other = home.who().email();
        return known.who().language().equals(home.who().language())
                && (one == null || other == null || one.equalsIgnoreCase(other));
    }

    private static SheetSaid said(SheetTable.Row row, String code, OldHome other) {
        return new SheetSaid(row.number(), "", Refusal.of(code, Map.of("row", other.row())));
    }

    /** Words of these columns that are not our own, as they are first written, by what they are folded to. */
    private static Map<String, String> foreign(
            SheetTable table, Map<SheetField, List<Integer>> places, String what, Predicate<String> isOurs) {
        Map<String, String> foreign = new LinkedHashMap<>();
        places.forEach((field, columns) -> {
            if (field.name().equals(what) || field.name().startsWith(what + "_")) {
                for (SheetTable.Row row : table.rows()) {
                    columns.stream()
                            .map(place -> row.cells().get(place))
                            .filter(word -> !WrittenWords.isNo(word) && !isOurs.test(word))
                            .forEach(word -> foreign.putIfAbsent(Folded.of(word), word));
                }
            }
        });
        return foreign;
    }
}
