package changeover.scheduling.claims;

import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A claim on a maker, with what came of it.
 *
 * @param returnedOn when the old part went back; null while it lies here
 * @param answer null while the maker has not answered
 */
public record PartClaim(
        UUID id,
        UUID visitId,
        UUID homeId,
        String home,
        @Nullable String machine,
        String partCode,
        Wording part,
        @Nullable String oldSerial,
        @Nullable String newSerial,
        String maker,
        @Nullable String number,
        LocalDate claimedOn,
        @Nullable LocalDate returnedOn,
        @Nullable Money credit,
        int version,
        @Nullable Answer answer) {

    /** @param amount null where it was refused */
    public record Answer(
            LocalDate day, @Nullable Money amount, @Nullable String words) {}
}
