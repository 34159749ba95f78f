package changeover.contracts.catalogue;

import changeover.contracts.words.Wording;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A reading says nothing without its unit and the state the machine runs in.
 *
 * @param unit code of {@link UnitOfMeasure}; null for yes-or-no
 * @param state running state the band is meant for; null when it does not matter
 * @param band what is expected; null when the figure is only kept to compare with the next
 * @param limit what it may never pass, wider than the band; null when leaving the band is all there is
 * @param beyond what to do outside the band or past the limit
 * @param sentence the finding that is offered then; null when there is none of its own
 * @param asked the plate's figure that it depends on (a third bank); null when it is always asked
 */
public record ReadingSpec(
        String code,
        Wording wording,
        Form form,
        @Nullable String unit,
        @Nullable Wording state,
        @Nullable Band band,
        @Nullable Band limit,
        @Nullable Wording beyond,
        @Nullable String sentence,
        @Nullable Asked asked) {

    /** Asked only of a machine whose plate says at least so many of something. */
    public record Asked(String plate, int atLeast) {}

    /** How it is answered. */
    public enum Form {
        @JsonProperty("number")
        NUMBER,
        @JsonProperty("yes-no")
        YES_NO,
        @JsonProperty("text")
        TEXT,
        @JsonProperty("date")
        DATE
    }

    /** Whether it is asked of a machine with that nameplate; a plate that says nothing is asked everything. */
    public boolean isAskedOf(Map<String, String> nameplate) {
        if (asked == null) {
            return true;
        }
        String said = nameplate.getOrDefault(asked.plate, "").strip();
        return !said.matches("\\d{1,4}") || Integer.parseInt(said) >= asked.atLeast;
    }
}
