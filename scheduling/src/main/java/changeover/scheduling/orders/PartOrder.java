package changeover.scheduling.orders;

import changeover.contracts.words.Wording;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A part that a visit waits for, with what came of it so far.
 *
 * @param orderedBy who wrote it down; empty for the system itself
 * @param arrivedOn when the last of it came
 * @param liesAt the place onto which it came last
 * @param told when the customer was told last
 * @param second the visit that was made to use it, the latest
 * @param own the visit that waits for it, where that one will use it or has used it: it is still to be kept on or after the day on
 *     which the part came, or was closed with the part in it
 * @param givenUp what has not come will not come
 */
public record PartOrder(
        UUID id,
        UUID visitId,
        UUID homeId,
        String home,
        @Nullable UUID equipmentId,
        @Nullable String machine,
        String partCode,
        Wording part,
        BigDecimal quantity,
        String supplier,
        LocalDate orderedOn,
        LocalDate expectedOn,
        @Nullable String words,
        String orderedBy,
        int version,
        BigDecimal arrived,
        @Nullable LocalDate arrivedOn,
        BigDecimal returned,
        @Nullable String liesAt,
        @Nullable Told told,
        @Nullable Going second,
        @Nullable Going own,
        @Nullable Ending givenUp) {

    /** @param here whether all of it was here then */
    public record Told(Instant at, ToldHow how, String who, boolean here) {}

    /** @param ended closed, cancelled, no_access or not_kept; null while it is open */
    public record Going(
            UUID visitId,
            @Nullable LocalDate day,
            @Nullable String technician,
            @Nullable String ended) {}

    public record Ending(LocalDate day, String why) {}

    public OrderFacts facts() {
        OrderFacts.Second uses = usedBy().map(PartOrder::second).orElse(OrderFacts.Second.NONE);
        return new OrderFacts(
                quantity, arrived, returned, expectedOn, givenUp != null, told != null && told.here(), uses);
    }

    /** Whether a visit was made to use it, and stands or was kept. */
    public boolean hasSecond() {
        return second(second) != OrderFacts.Second.NONE;
    }

    /** The visit that uses it: the one made for it, unless the one that waits for it has used it or none was made. */
    public Optional<Going> usedBy() {
        boolean usedThere = second(own) == OrderFacts.Second.KEPT;
        return Optional.ofNullable(hasSecond() && !usedThere ? second : own);
    }

    private static OrderFacts.Second second(@Nullable Going going) {
        if (going == null || going.ended() != null && !going.ended().equals("closed")) {
            return OrderFacts.Second.NONE;
        }
        if (going.ended() != null) {
            return OrderFacts.Second.KEPT;
        }
        return going.day() == null ? OrderFacts.Second.WITHOUT_DAY : OrderFacts.Second.HAS_A_DAY;
    }
}
