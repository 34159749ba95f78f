package changeover.contracts.homesfile;

import changeover.contracts.takeover.Brought;
import changeover.contracts.takeover.BroughtFile;
import changeover.contracts.takeover.BroughtList;
import changeover.contracts.takeover.Title;
import changeover.contracts.words.Refused;
import changeover.contracts.words.Wording;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Homes with their machines are the first list of a shop that is taken over. */
@ApplicationScoped
class HomesFileList implements BroughtList {

    private static final Set<Column> NEEDED =
            EnumSet.of(Column.HOME, Column.CUSTOMER, Column.STREET, Column.UNIT, Column.KIND);

    @Inject
    HomesImport homes;

    @Override
    public String code() {
        return "homes";
    }

    @Override
    public List<Title> titles() {
        return Arrays.stream(Column.values())
                .map(column -> new Title(column.title(), column.title(), NEEDED.contains(column)))
                .toList();
    }

    @Override
    public int turn() {
        return 0;
    }

    @Override
    public Brought bring(BroughtFile file, LocalDate day) {
        var notes = new Brought.Notes();
        HomesImport.Outcome outcome;
        try {
            outcome = homes.bring(file.bytes(), false, HomesImport.Bad.RETURN);
        } catch (Refused unread) {
            notes.fault(1, "", unread.refusals().getFirst());
            return notes.done();
        }
        outcome.faults().forEach(fault -> notes.fault(fault.row(), fault.column(), fault.why()));
        if (outcome.written() > 0) {
            notes.change(
                    1,
                    new Wording("Homes, customers, machines", "Maisons, clients, appareils"),
                    Brought.NOTHING,
                    Brought.alike(outcome.homes() + ", " + outcome.customers() + ", " + outcome.units()));
        }
        return notes.done();
    }
}
