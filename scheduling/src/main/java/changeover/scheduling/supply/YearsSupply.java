package changeover.scheduling.supply;

import changeover.contracts.calendar.Window;
import changeover.contracts.words.Wording;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the homes under a plan will use up in a year, part by part.
 *
 * @param unknown tasks that take a part only when it is needed, and of which no visit says yet how often that is
 */
public record YearsSupply(Window year, List<Line> lines, List<Unknown> unknown) {

    public YearsSupply {
        lines = List.copyOf(lines);
        unknown = List.copyOf(unknown);
    }

    /**
     * A part of a size.
     *
     * @param partCode the business's own part that fits; null where it carries none
     * @param homes how many homes use it
     */
    public record Line(
            String kind,
            Wording part,
            String unit,
            @Nullable String size,
            @Nullable String partCode,
            int homes,
            PartNeed need) {}

    public record Unknown(Wording task, Wording part) {}
}
