package changeover.contracts.oldsheet;

import changeover.contracts.words.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The cells of one row by what they say, with everything that is said about them. */
final class Cells {

    private final SheetTable.Row row;
    private final List<String> titles;
    private final Map<SheetField, List<Integer>> places;
    private final List<SheetSaid> faults = new ArrayList<>();
    private final List<SheetSaid> remarks = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    Cells(SheetTable.Row row, List<String> titles, Map<SheetField, List<Integer>> places) {
        this.row = row;
        this.titles = titles;
        this.places = places;
    }

    int row() {
        return row.number();
    }

    /** What its columns say together, an empty text for nothing. */
    String text(SheetField field) {
        return String.join(" ", each(field));
    }

    /** What each of its columns says, where it says anything. */
    List<String> each(SheetField field) {
        return places.getOrDefault(field, List.of()).stream()
                .map(place -> row.cells().get(place))
                .filter(cell -> !cell.isEmpty())
                .toList();
    }

    /** The same, null for nothing, and a fault when it is longer than it may be. */
    @Nullable
    String line(SheetField field, int most) {
        String said = text(field);
        if (said.length() > most) {
            fault(field, Refusal.of("text.too-long", Map.of("max", most)));
            return null;
        }
        return said.isEmpty() ? null : said;
    }

    /** The same, and a fault when it is missing. */
    String must(SheetField field, int most) {
        String said = line(field, most);
        if (said == null && faults.stream().noneMatch(fault -> fault.column().equals(title(field)))) {
            fault(field, Refusal.of("text.missing"));
        }
        return said == null ? "" : said;
    }

    void fault(SheetField field, Refusal why) {
        faults.add(new SheetSaid(row.number(), title(field), why));
    }

    void remark(SheetField field, Refusal how) {
        remarks.add(new SheetSaid(row.number(), title(field), how));
    }

    /** Keeps in the note what has no place of its own, under its title. */
    void note(SheetField field) {
        for (int place : places.getOrDefault(field, List.of())) {
            if (!row.cells().get(place).isEmpty()) {
                notes.add(titles.get(place) + ": " + row.cells().get(place));
            }
        }
    }

    /** The notes of the file and what was kept with them. */
    @Nullable
    String notes(int most) {
        List<Integer> own = places.getOrDefault(SheetField.NOTE, List.of());
        List<String> all = new ArrayList<>();
        for (int place : own) {
            String cell = row.cells().get(place);
            if (!cell.isEmpty()) {
                all.add(own.size() == 1 ? cell : titles.get(place) + ": " + cell);
            }
        }
        all.addAll(notes);
        String said = all.stream().collect(Collectors.joining("\n"));
        return said.isEmpty() ? null : said.length() <= most ? said : said.substring(0, most);
    }

    List<SheetSaid> faults() {
        return List.copyOf(faults);
    }

    List<SheetSaid> remarks() {
        return List.copyOf(remarks);
    }

    /** Of its first column; empty where the file has none for it. */
    String title(SheetField field) {
        List<Integer> own = places.getOrDefault(field, List.of());
        return own.isEmpty() ? "" : titles.get(own.getFirst());
    }
}
