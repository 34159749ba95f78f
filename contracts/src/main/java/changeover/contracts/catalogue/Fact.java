package changeover.contracts.catalogue;

import changeover.contracts.words.Wording;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One thing a kind of equipment says about itself: what fits it (a filter's size) or what stands on its nameplate (kW).
 *
 * @param name as the homes file writes it, {@code size=16x25x4}
 * @param unit of the number, as {@link UnitOfMeasure} codes it; null for text and choices
 * @param part the kind of part this fact picks, if it picks one
 * @param counts the kind of part that this fact says how many of there are, if it says so
 */
public record Fact(
        String name,
        Wording wording,
        Form form,
        @Nullable String unit,
        List<Choice> choices,
        @Nullable String part,
        @Nullable String counts) {

    /** One that counts no parts. */
    public Fact(
            String name,
            Wording wording,
            Form form,
            @Nullable String unit,
            List<Choice> choices,
            @Nullable String part) {
        this(name, wording, form, unit, choices, part, null);
    }

    /** What may be written. */
    public enum Form {
        @JsonProperty("text")
        TEXT,
        @JsonProperty("number")
        NUMBER,
        @JsonProperty("choice")
        CHOICE,
        @JsonProperty("date")
        DATE
    }

    /** One allowed value with its words. */
    public record Choice(String value, Wording wording) {}

    @SuppressWarnings("NullAway") // a missing list in the data means none
    public Fact {
        choices = choices == null ? List.of() : List.copyOf(choices);
    }

    /** Whether the value may stand there: one of the choices, a number, or any text of at most 120 characters. */
    public boolean allows(String value) {
        return switch (form) {
            case TEXT -> !value.isBlank() && value.length() <= 120;
            case NUMBER -> number(value).isPresent();
            case CHOICE -> choices.stream().anyMatch(choice -> choice.value.equals(value));
            case DATE -> value.matches("\\d{4}-\\d{2}(-\\d{2})?");
        };
    }

    /** The value in the reader's words; what is not a choice is said as written. */
    public Optional<Wording> wordingOf(String value) {
        return choices.stream()
                .filter(choice -> choice.value.equals(value))
                .map(Choice::wording)
                .findFirst();
    }

    private static Optional<BigDecimal> number(String value) {
        return value.matches("-?\\d{1,9}([.,]\\d{1,4})?")
                ? Optional.of(new BigDecimal(value.replace(',', '.')))
                : Optional.empty();
    }
}
