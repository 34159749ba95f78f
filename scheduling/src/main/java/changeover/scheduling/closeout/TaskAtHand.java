package changeover.scheduling.closeout;

import changeover.contracts.catalogue.ReadingSpec;
import changeover.contracts.catalogue.Task;
import changeover.contracts.words.Wording;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A task of the visit in hand, with what the catalogue says of it.
 *
 * @param ticket the licence card it asks for: refrigerant, gas or electrical
 * @param act do, check or replace
 * @param caution code of what may hurt somebody
 */
public record TaskAtHand(
        UUID id,
        @Nullable UUID equipment,
        String code,
        Wording wording,
        Wording reason,
        String basis,
        String act,
        @Nullable String ticket,
        int minutes,
        List<ReadingSpec> readings,
        List<Task.PartUse> parts,
        @Nullable String caution) {

    public TaskAtHand {
        readings = List.copyOf(readings);
        parts = List.copyOf(parts);
    }

    Optional<ReadingSpec> reading(String readingCode) {
        return readings.stream().filter(spec -> spec.code().equals(readingCode)).findFirst();
    }
}
