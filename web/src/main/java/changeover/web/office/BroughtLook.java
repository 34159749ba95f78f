package changeover.web.office;

import changeover.contracts.broughtfiles.BroughtFiles;
import changeover.contracts.takeover.Brought;
import changeover.contracts.takeover.BroughtList;
import changeover.contracts.words.Refusals;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Lists that were brought, as a person sees them before the yes and after it.
 *
 * @param carried the files themselves for the yes; none where they are written, or one is too large to come back with a form
 */
public record BroughtLook(
        boolean dry, int changes, int unchanged, int bad, List<File> files, List<Carried> carried, String seen) {

    /** As many rows of each list stand on the page. */
    private static final int SHOWN = 100;

    /** @param list empty where nobody knows the file */
    public record File(
            String name,
            String list,
            String why,
            int count,
            List<Row> rows,
            int more,
            int bad,
            List<Wrong> wrongs,
            int moreWrongs) {}

    public record Row(int number, String what, String before, String now) {}

    public record Wrong(int number, String column, String why) {}

    public record Carried(String name, String text) {}

    /** @param waiting the files that wait for a yes; none once they are written */
    static BroughtLook of(
            BroughtFiles.Looked looked,
            String seen,
            List<BroughtFiles.Named> waiting,
            List<BroughtList> lists,
            Locale locale) {
        List<Carried> carried = waiting.stream()
                .map(file -> new Carried(file.name(), CarriedFile.close(file.bytes())))
                .toList();
        boolean tooLarge = carried.stream().anyMatch(one -> one.text().isEmpty());
        return new BroughtLook(
                !waiting.isEmpty(),
                looked.changes(),
                looked.unchanged(),
                looked.bad(),
                looked.files().stream().map(file -> file(file, lists, locale)).toList(),
                tooLarge ? List.of() : carried,
                seen);
    }

    private static File file(BroughtFiles.Read read, List<BroughtList> lists, Locale locale) {
        Brought brought = read.brought();
        @Nullable String list = read.list();
        return new File(
                read.name(),
                list == null ? "" : list,
                read.why() == null ? "" : Refusals.sentence(read.why(), locale),
                brought.changes().size(),
                brought.changes().stream()
                        .limit(SHOWN)
                        .map(change -> new Row(
                                change.row(),
                                change.what().in(locale),
                                change.before().in(locale),
                                change.now().in(locale)))
                        .toList(),
                Math.max(0, brought.changes().size() - SHOWN),
                brought.faults().size(),
                brought.faults().stream()
                        .limit(SHOWN)
                        .map(fault -> new Wrong(
                                fault.row(),
                                column(fault.column(), list, lists, locale),
                                Refusals.sentence(fault.why(), locale)))
                        .toList(),
                Math.max(0, brought.faults().size() - SHOWN));
    }

    /** As the list calls it in the reader's language. */
    private static String column(String said, @Nullable String list, List<BroughtList> lists, Locale locale) {
        return lists.stream()
                .filter(one -> one.code().equals(list))
                .flatMap(one -> one.titles().stream())
                .filter(title -> title.en().equals(said))
                .map(title -> locale.getLanguage().equals("fr") ? title.fr() : title.en())
                .findFirst()
                .orElse(said);
    }
}
