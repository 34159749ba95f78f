package changeover.billing.documents.band;

import changeover.contracts.calendar.Changeover;
import changeover.contracts.calendar.Season;
import changeover.contracts.calendar.Window;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The weeks in which homes are turned to cooling or to heating. */
public record Turn(Changeover kind, Window window) {

    /** Every turn with a day from {@code first} to {@code last}, both in, whole; seasons that are no changeover are left out. */
    public static List<Turn> of(List<Season> seasons, LocalDate first, LocalDate last) {
        Window days = Window.ofDays(first, last);
        return seasons.stream().flatMap(season -> turns(season, days).stream()).toList();
    }

    private static List<Turn> turns(Season season, Window days) {
        @Nullable Changeover kind = season.changeover();
        return kind == null
                ? List.of()
                : season.meeting(days).stream()
                        .map(window -> new Turn(kind, window))
                        .toList();
    }
}
