package changeover.contracts.oldsheet;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.words.Refusal;
import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The days of one row: one that may be two is asked for again, one of which the month alone is known only where that will do. */
final class DayReader {

    private final Cells cells;
    private final @Nullable DayOrder order;

    DayReader(Cells cells, @Nullable DayOrder order) {
        this.cells = cells;
        this.order = order;
    }

    /** Null for nothing, and for what was not understood: then there is a fault. */
    @Nullable
    LocalDate whole(SheetField field) {
        return switch (read(field)) {
            case null -> null;
            case WrittenDay.On(LocalDate day) -> day;
            case WrittenDay.Within _ -> {
                cells.fault(field, Refusal.of("oldsheet.day-whole", said(field)));
                yield null;
            }
            case WrittenDay.Twofold two -> twofold(field, two);
            case WrittenDay.Unreadable _ -> unreadable(field);
        };
    }

    /** The first day of a month or a year will do, and is told. */
    @Nullable
    LocalDate about(SheetField field) {
        return switch (read(field)) {
            case null -> null;
            case WrittenDay.On(LocalDate day) -> day;
            case WrittenDay.Within(LocalDate first) -> {
                cells.remark(field, Refusal.of("oldsheet.day-about", Map.of("day", DayInWords.of(first))));
                yield first;
            }
            case WrittenDay.Twofold two -> twofold(field, two);
            case WrittenDay.Unreadable _ -> unreadable(field);
        };
    }

    private @Nullable WrittenDay read(SheetField field) {
        String said = cells.text(field);
        return said.isEmpty() || said.equals("-") ? null : WrittenDay.read(said, order);
    }

    private @Nullable LocalDate twofold(SheetField field, WrittenDay.Twofold two) {
        cells.fault(
                field,
                Refusal.of(
                        "oldsheet.day-twofold",
                        Map.of(
                                "word", cells.text(field),
                                "one", DayInWords.of(two.one()),
                                "other", DayInWords.of(two.other()))));
        return null;
    }

    private @Nullable LocalDate unreadable(SheetField field) {
        cells.fault(field, Refusal.of("oldsheet.day", said(field)));
        return null;
    }

    private Map<String, String> said(SheetField field) {
        return Map.of("word", PeopleReader.shortened(cells.text(field)));
    }
}
