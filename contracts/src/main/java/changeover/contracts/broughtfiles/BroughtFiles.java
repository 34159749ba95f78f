package changeover.contracts.broughtfiles;

import changeover.contracts.oldsheet.SheetTable;
import changeover.contracts.takeover.Brought;
import changeover.contracts.takeover.BroughtFile;
import changeover.contracts.takeover.BroughtList;
import changeover.contracts.takeover.TakeOver;
import changeover.contracts.takeover.Title;
import changeover.contracts.words.Folded;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Several lists of a running shop are looked at together and brought on one yes: each is known by its titles, and they are
 * written in their turn. A look writes everything and takes it back, so a list may name what another one beside it brings.
 */
@ApplicationScoped
public class BroughtFiles {

    @Inject
    @Any
    Instance<BroughtList> lists;

    @Inject
    TakeOver takeOver;

    @Inject
    EntityManager rows;

    public record Named(String name, byte[] bytes) {}

    /**
     * One file as it was understood.
     *
     * @param list which it is; null where nobody knows it
     * @param why it could not be read; null where it was
     */
    public record Read(
            String name,
            @Nullable String list,
            Brought brought,
            @Nullable Refusal why) {}

    /** All files in the order in which they are written, those that nobody knows last. */
    public record Looked(List<Read> files) {

        public Looked {
            files = List.copyOf(files);
        }

        /** Alike for the same changes only: what a person saw is what is done. */
        public String seen() {
            return Integer.toHexString(files.toString().hashCode());
        }

        public int changes() {
            return files.stream()
                    .mapToInt(file -> file.brought().changes().size())
                    .sum();
        }

        public int unchanged() {
            return files.stream().mapToInt(file -> file.brought().unchanged()).sum();
        }

        /** Rows that stay out, and files that could not be read. */
        public int bad() {
            return files.stream()
                    .mapToInt(file -> file.why() != null
                            ? 1
                            : (int) file.brought().faults().stream()
                                    .map(Brought.Fault::row)
                                    .distinct()
                                    .count())
                    .sum();
        }
    }

    private record Known(
            Named file,
            @Nullable BroughtList list,
            @Nullable SheetTable table,
            @Nullable Refusal why) {

        int turn() {
            return list == null ? Integer.MAX_VALUE : list.turn();
        }

        Read unread() {
            return new Read(file.name(), list == null ? null : list.code(), new Brought(List.of(), 0, List.of()), why);
        }
    }

    /** The lists that may be brought, in their turn. */
    public List<BroughtList> lists() {
        return lists.stream().sorted(Comparator.comparingInt(BroughtList::turn)).toList();
    }

    /** What the files would change. */
    public Looked look(List<Named> files, LocalDate day) {
        rows.flush();
        rows.createNativeQuery("savepoint brought_lists").executeUpdate();
        Looked looked = bring(files, day);
        rows.flush();
        rows.createNativeQuery("rollback to savepoint brought_lists").executeUpdate();
        rows.clear();
        return looked;
    }

    /** Writes the good rows of all files. Of two who bring lists at one moment the second waits, and adds to what is there then. */
    public Looked bring(List<Named> files, LocalDate day) {
        rows.createNativeQuery(
                        "select 1 from pg_advisory_xact_lock(hashtextextended('lists ' || current_tenant()::text, 0))")
                .getSingleResult();
        takeOver.on(day);
        List<Read> read = new ArrayList<>();
        List<Known> known = files.stream()
                .map(this::known)
                .sorted(Comparator.comparingInt(Known::turn))
                .toList();
        for (Known one : known) {
            BroughtList list = one.list();
            SheetTable table = one.table();
            if (list == null || table == null) {
                read.add(one.unread());
                continue;
            }
            var columns = new BroughtFile.Columns(table.titles(), list.titles());
            Brought brought = list.bring(
                    new BroughtFile(
                            one.file().bytes(),
                            table.rows().stream()
                                    .map(row -> columns.row(row.number(), row.cells()))
                                    .toList()),
                    day);
            rows.flush();
            read.add(new Read(one.file().name(), list.code(), brought, null));
        }
        return new Looked(read);
    }

    private Known known(Named file) {
        SheetTable table;
        try {
            table = SheetTable.of(file.bytes());
        } catch (Refused refused) {
            return new Known(file, null, null, refused.refusals().getFirst());
        }
        Set<String> titles = table.titles().stream().map(Folded::of).collect(Collectors.toCollection(HashSet::new));
        return lists.stream()
                .filter(list -> list.titles().stream().filter(Title::needed).allMatch(title -> title.isAmong(titles)))
                .max(Comparator.comparingLong(list -> matching(list, titles)))
                .map(list -> new Known(file, list, table, null))
                .orElseGet(() -> new Known(file, null, table, Refusal.of("brought.unknown")));
    }

    private static long matching(BroughtList list, Set<String> titles) {
        return list.titles().stream().filter(title -> title.isAmong(titles)).count();
    }

    /** The titles of a list as one line of a file, those that are needed first. */
    public static String line(BroughtList list, boolean french) {
        return list.titles().stream()
                .sorted(Comparator.comparing(title -> !title.needed()))
                .map(title -> french ? title.fr() : title.en())
                .collect(Collectors.joining(", "));
    }
}
