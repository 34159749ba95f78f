package changeover.contracts.oldsheet;

import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The machines of one row; what is written of one whose kind is not known goes into the note and is read at the first visit. */
final class MachinesReader {

    private static final List<String> FACTS = List.of("MAKE", "MODEL", "SERIAL", "INSTALLED");

    private final Cells cells;
    private final SheetWords words;
    private final DayReader days;
    private final List<OldHome.Unit> units = new ArrayList<>();
    private boolean unread;

    MachinesReader(Cells cells, SheetWords words, DayReader days) {
        this.cells = cells;
        this.words = words;
        this.days = days;
    }

    List<OldHome.Unit> read() {
        for (int machine = 1; machine <= SheetField.MACHINES; machine++) {
            machine(machine);
        }
        return List.copyOf(units);
    }

    /** Whether something is left to the first visit: no machine is named, or one whose kind nobody said. */
    boolean toBeRead() {
        return unread || units.isEmpty();
    }

    private void machine(int machine) {
        SheetField kind = SheetField.ofMachine("KIND", machine);
        String said = cells.text(kind);
        boolean told = FACTS.stream()
                .anyMatch(
                        fact -> !cells.text(SheetField.ofMachine(fact, machine)).isEmpty());
        if (WrittenWords.isNo(said) && !told) {
            return;
        }
        String code = said.isEmpty() ? "" : words.kind(said).orElse(null);
        if (code == null) {
            cells.fault(kind, Refusal.of("oldsheet.kind-unknown", Map.of("word", PeopleReader.shortened(said))));
        } else if (code.isEmpty()) {
            unread = true;
            cells.remark(kind, Refusal.of("oldsheet.kind-unread"));
            cells.note(kind);
            FACTS.forEach(fact -> cells.note(SheetField.ofMachine(fact, machine)));
        } else {
            units.add(new OldHome.Unit(
                    code,
                    cells.line(SheetField.ofMachine("MAKE", machine), Checks.LINE),
                    cells.line(SheetField.ofMachine("MODEL", machine), Checks.LINE),
                    cells.line(SheetField.ofMachine("SERIAL", machine), Checks.LINE),
                    days.about(SheetField.ofMachine("INSTALLED", machine))));
        }
    }
}
