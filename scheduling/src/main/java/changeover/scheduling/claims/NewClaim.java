package changeover.scheduling.claims;

import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A replaced part is claimed from its maker.
 *
 * @param partCode of those that the visit used
 * @param maker whom it is claimed from
 * @param number the maker's own number of the claim, where it is known already
 * @param credit what is expected
 * @param claimedOn null for today
 */
public record NewClaim(
        UUID visitId,
        @Nullable UUID equipmentId,
        String partCode,
        @Nullable String oldSerial,
        @Nullable String newSerial,
        String maker,
        @Nullable String number,
        @Nullable Money credit,
        @Nullable LocalDate claimedOn) {

    /** Claimed today. */
    public NewClaim(
            UUID visitId,
            @Nullable UUID equipmentId,
            String partCode,
            @Nullable String oldSerial,
            @Nullable String newSerial,
            String maker,
            @Nullable String number,
            @Nullable Money credit) {
        this(visitId, equipmentId, partCode, oldSerial, newSerial, maker, number, credit, null);
    }
}
