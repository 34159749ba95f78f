package changeover.web.office;

import changeover.contracts.words.Refusal;
import changeover.scheduling.households.FilterLooks;
import changeover.web.session.Typed;
import java.time.LocalDate;
import java.util.Set;

/** What a form says of a filter: how it looked, whether a new one was put in, on which day and who told; never ahead of the day. */
final class FilterTelling {

    private FilterTelling() {}

    static FilterLooks.Telling read(Typed typed, LocalDate today) {
        String found = typed.line("found", 10) == null ? null : typed.oneOf("found", Set.of("clean", "grey"));
        boolean changed = typed.ticked("changed");
        String by = typed.text("by", 120);
        LocalDate day = typed.day("day");
        if (day.isAfter(today)) {
            typed.refuse(Refusal.of("household.ahead").at("day"));
        }
        return new FilterLooks.Telling(day, found, changed, by);
    }
}
