package changeover.contracts.catalogue;

import changeover.contracts.words.Wording;
import com.fasterxml.jackson.annotation.JsonProperty;
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
        @Nullable String sentence) {

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
}
