package changeover.contracts.homesfile;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.OwnCatalogue;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Brings a homes file in. What is wrong is listed with row, column and reason; then either nothing is written, or the
 * good rows are and the bad ones come back as a file, as the person chose. The file's keys find what is already here,
 * so bringing the same file twice changes nothing.
 */
@ApplicationScoped
public class HomesImport {

    /** What becomes of a file with bad rows: nothing of it is written, or its good rows are. */
    public enum Bad {
        REFUSE,
        RETURN
    }

    /**
     * What was done, or in a dry run would be.
     *
     * @param rows data rows in the file
     * @param written rows that went in; none when the file was refused
     * @param badRows the bad rows as a file of the same columns; empty when there are none
     */
    public record Outcome(
            int rows, int written, int homes, int customers, int units, List<Fault> faults, byte[] badRows) {}

    @Inject
    OwnCatalogue catalogue;

    @Inject
    Businesses businesses;

    @Inject
    HomesRows rows;

    /** The titles of the file's columns, in their order. */
    public static List<String> columns() {
        return Arrays.stream(Column.values()).map(Column::title).toList();
    }

    /** @throws changeover.contracts.words.Refused when the file as a whole cannot be read */
    public Outcome bring(byte[] file, boolean dry, Bad bad) {
        List<Line> lines = HomesCsv.read(file);
        var faults = new ArrayList<Fault>();
        List<ReadLine> understood = understood(lines, faults);
        agreeing(understood, faults);
        Set<Integer> badRows = new HashSet<>();
        faults.forEach(fault -> badRows.add(fault.row()));
        List<ReadLine> good = understood.stream()
                .filter(read -> !badRows.contains(read.line().row()))
                .toList();
        boolean writes = badRows.isEmpty() || bad == Bad.RETURN;
        List<ReadLine> written = writes ? good : List.of();
        if (!dry && !written.isEmpty()) {
            rows.write(written);
        }
        faults.sort(Comparator.comparingInt(Fault::row));
        return new Outcome(
                lines.size(),
                written.size(),
                distinct(written, true),
                distinct(written, false),
                (int) written.stream().filter(read -> read.unit() != null).count(),
                faults,
                badRows.isEmpty()
                        ? new byte[0]
                        : HomesCsv.write(lines.stream()
                                .filter(line -> badRows.contains(line.row()))
                                .toList()));
    }

    private List<ReadLine> understood(List<Line> lines, List<Fault> faults) {
        Catalogue trade = catalogue.read().catalogue();
        String language = businesses.current().language();
        var understood = new ArrayList<ReadLine>();
        for (Line line : lines) {
            var reader = new LineReader(line, trade, language);
            understood.add(reader.read());
            faults.addAll(reader.faults());
        }
        return understood;
    }

    /** A home says the same on each of its rows, a customer on each of theirs, and no unit stands twice. */
    private static void agreeing(List<ReadLine> understood, List<Fault> faults) {
        Map<String, Line> firstOfHome = new HashMap<>();
        Map<String, Line> firstOfCustomer = new HashMap<>();
        Map<String, Integer> units = new HashMap<>();
        for (ReadLine read : understood) {
            agree(firstOfHome.putIfAbsent(read.home().key(), read.line()), read.line(), Column.HOME, faults);
            agree(
                    firstOfCustomer.putIfAbsent(read.home().customer(), read.line()),
                    read.line(),
                    Column.CUSTOMER,
                    faults);
            String unit = read.home().key() + "\n"
                    + (read.unit() == null ? "" : read.unit().name());
            Integer before = units.putIfAbsent(unit, read.line().row());
            if (before != null) {
                faults.add(
                        Fault.of(read.line(), Column.UNIT, Refusal.of("homesfile.unit-twice", Map.of("row", before))));
            }
        }
    }

    private static void agree(
            @org.jspecify.annotations.Nullable Line first, Line line, Column key, List<Fault> faults) {
        if (first == null) {
            return;
        }
        for (Column column : Column.values()) {
            boolean ofThis = key == Column.HOME
                    ? column.isOfTheHome() && column != Column.HOME
                    : column == Column.LANGUAGE || column == Column.PHONE || column == Column.EMAIL;
            if (ofThis && !first.cell(column).strip().equals(line.cell(column).strip())) {
                faults.add(Fault.of(
                        line, column, Refusal.of("homesfile.differs-" + key.title(), Map.of("row", first.row()))));
            }
        }
    }

    private static int distinct(List<ReadLine> lines, boolean homes) {
        return (int) lines.stream()
                .map(read -> homes ? read.home().key() : read.home().customer())
                .distinct()
                .count();
    }
}
