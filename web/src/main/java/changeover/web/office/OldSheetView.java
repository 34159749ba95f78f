package changeover.web.office;

import changeover.contracts.oldsheet.DayOrder;
import changeover.contracts.oldsheet.OldSheets;
import changeover.contracts.oldsheet.SheetField;
import changeover.contracts.oldsheet.SheetImport;
import changeover.contracts.oldsheet.SheetLook;
import changeover.contracts.oldsheet.SheetSaid;
import changeover.contracts.oldsheet.SheetTable;
import changeover.contracts.words.Refusals;
import changeover.web.session.Bundles;
import changeover.web.session.Frame;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;

/**
 * An old spreadsheet as its page shows it.
 *
 * @param named whether a person said how it is read; before that nothing is written
 * @param mend rows to be mended
 * @param here homes that are in the register already
 * @param moreWrongs sentences that are not shown
 * @param rowNumbers of the rows that are shown
 */
public record OldSheetView(
        UUID id,
        String name,
        boolean named,
        boolean brought,
        int rows,
        int fresh,
        int agreements,
        int units,
        int mend,
        int here,
        int twice,
        List<Column> columns,
        List<Integer> rowNumbers,
        List<AsRead> asRead,
        List<Choice> fields,
        List<Choice> orders,
        List<Choice> kinds,
        List<Choice> plans,
        List<Word> kindWords,
        List<Word> planWords,
        boolean twofold,
        List<Wrong> wrongs,
        int moreWrongs,
        List<Wrong> remarks,
        int moreRemarks) {

    private static final int SHOWN = 100;

    /** @param cells as they stand in the rows that are shown */
    public record Column(String field, String title, List<String> cells) {}

    /** What is read of the rows that are shown, one fact a line. */
    public record AsRead(String what, List<String> cells) {}

    public record Choice(String code, String words) {}

    public record Word(String field, String wordField, String written) {}

    public record Wrong(int row, String column, String why) {}

    static OldSheetView of(OldSheets.Kept kept, SheetImport.Looked looked, SheetLook.Ground ground, Frame frame) {
        Locale locale = frame.locale();
        List<SheetTable.Row> three = looked.three();
        SheetLook look = looked.look();
        List<Column> columns = new ArrayList<>();
        for (int place = 0; place < looked.table().titles().size(); place++) {
            int at = place;
            columns.add(new Column(
                    "column-" + place,
                    looked.table().titles().get(place),
                    three.stream().map(row -> row.cells().get(at)).toList()));
        }
        OldSheetWords words = Bundles.of(OldSheetWords.class, locale);
        return new OldSheetView(
                kept.id(),
                kept.name(),
                kept.named(),
                kept.broughtAt() != null,
                looked.table().rows().size(),
                looked.fresh().size(),
                looked.agreements(),
                looked.units(),
                look.badRows().size(),
                looked.here().size(),
                look.twice(),
                columns,
                three.stream().map(SheetTable.Row::number).toList(),
                SheetAsRead.of(
                        three.stream().map(row -> looked.read(row, ground)).toList(), ground, frame, words),
                Arrays.stream(SheetField.values())
                        .map(field -> new Choice(field.code(), field.wording().in(locale)))
                        .toList(),
                List.of(
                        new Choice(DayOrder.DAY.code(), words.day_first()),
                        new Choice(DayOrder.MONTH.code(), words.month_first()),
                        new Choice(DayOrder.YEAR.code(), words.year_first())),
                ground.catalogue().kinds().stream()
                        .map(kind -> new Choice(kind.code(), kind.wording().in(locale)))
                        .toList(),
                ground.plans().stream()
                        .map(plan -> new Choice(plan.code(), plan.name().in(locale)))
                        .toList(),
                words("kind", look.kinds()),
                words("plan", look.plans()),
                look.faults().stream().anyMatch(fault -> fault.what().code().equals("oldsheet.day-twofold")),
                said(look.faults(), locale),
                Math.max(0, look.faults().size() - SHOWN),
                said(look.remarks(), locale),
                Math.max(0, look.remarks().size() - SHOWN));
    }

    private static List<Word> words(String what, Map<String, String> asked) {
        List<Word> words = new ArrayList<>();
        for (String written : asked.values()) {
            if (words.size() < SheetForm.MOST_WORDS) {
                words.add(new Word(what + "-" + words.size(), what + "Word-" + words.size(), written));
            }
        }
        return words;
    }

    private static List<Wrong> said(List<SheetSaid> said, Locale locale) {
        return said.stream()
                .limit(SHOWN)
                .map(one -> new Wrong(one.row(), one.column(), Refusals.sentence(one.what(), locale)))
                .toList();
    }
}
