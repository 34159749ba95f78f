package changeover.contracts.catalogue;

import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One clause of what can be promised for a kind of equipment: what is done, by whom, how often, and how it is judged.
 *
 * @param code unique in the catalogue; kept for good, since agreements and histories name it
 * @param kinds the kinds of equipment it is done on
 * @param when facts of the equipment that it is for (a filter's thickness); empty for all. A fact that is not written
 *     down yet counts as {@code unknown}
 * @param minutes planning figure
 * @param outdoorAtLeast outdoor temperature in degrees Celsius below which its readings say nothing; null when any
 * @param caution code of what may hurt somebody; null when nothing special
 * @param basis {@code common practice}, or the law, standard or agency it comes from
 * @param source where that is published; null for common practice
 */
public record Task(
        String code,
        List<String> kinds,
        Map<String, List<String>> when,
        Wording wording,
        Who who,
        TicketNeeded ticket,
        int minutes,
        Cadence cadence,
        @Nullable BigDecimal outdoorAtLeast,
        List<ReadingSpec> readings,
        List<PartUse> parts,
        @Nullable String caution,
        String basis,
        @Nullable String source) {

    /** A part the task uses up: so many of a kind, each time or only when it is needed. */
    public record PartUse(String part, BigDecimal quantity, boolean eachTime) {}

    public static final String COMMON_PRACTICE = "common practice";
    static final String UNKNOWN = "unknown";

    @SuppressWarnings("NullAway") // missing lists in the data mean none
    public Task {
        kinds = List.copyOf(kinds);
        when = when == null ? Map.of() : Map.copyOf(when);
        readings = readings == null ? List.of() : List.copyOf(readings);
        parts = parts == null ? List.of() : List.copyOf(parts);
        if (minutes < 1) {
            throw new IllegalArgumentException("minutes of " + code + ": " + minutes);
        }
    }

    /** Whether it is a task for this machine: its kind, and the facts it is for. */
    public boolean isFor(String kind, Map<String, String> fits) {
        return kinds.contains(kind)
                && when.entrySet().stream()
                        .allMatch(fact -> fact.getValue().contains(fits.getOrDefault(fact.getKey(), UNKNOWN)));
    }

    public Optional<ReadingSpec> reading(String readingCode) {
        return readings.stream()
                .filter(reading -> reading.code().equals(readingCode))
                .findFirst();
    }

    public Task withCadence(Cadence other, String otherBasis, @Nullable String otherSource) {
        return new Task(
                code,
                kinds,
                when,
                wording,
                who,
                ticket,
                minutes,
                other,
                outdoorAtLeast,
                readings,
                parts,
                caution,
                otherBasis,
                otherSource);
    }
}
