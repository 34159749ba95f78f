package changeover.scheduling.closeout;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.Comparator;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An operation as a device sends it: in its own words until it is read.
 *
 * @param id made by the device; the same id again gives the same answer and changes nothing
 * @param device names the device; its operations are taken in the order of their sequence
 * @param sequence the device's own count
 * @param at by the device's clock
 * @param basedOn the operation that must have been taken before; null when it waits for nothing
 */
public record SentOperation(
        UUID id,
        String device,
        long sequence,
        Instant at,
        @Nullable UUID basedOn,
        String kind,
        JsonNode body) {

    static final Comparator<SentOperation> ORDER =
            Comparator.comparing(SentOperation::device).thenComparingLong(SentOperation::sequence);

    /** One that a form or a program of ours builds. */
    public static SentOperation of(UUID id, String device, long sequence, Instant at, Operation operation) {
        return new SentOperation(id, device, sequence, at, null, operation.kind(), OperationJson.write(operation));
    }

    public SentOperation after(UUID earlier) {
        return new SentOperation(id, device, sequence, at, earlier, kind, body);
    }
}
