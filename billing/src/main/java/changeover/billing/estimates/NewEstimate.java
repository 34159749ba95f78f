package changeover.billing.estimates;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An estimate to be written for a home.
 *
 * @param callId the call that it answers
 * @param visitId the visit in which the need for it was found
 * @param followUpId what that visit left to be estimated
 */
public record NewEstimate(
        UUID homeId,
        @Nullable UUID callId,
        @Nullable UUID visitId,
        @Nullable UUID followUpId,
        EstimateFacts facts) {

    NewEstimate at(UUID home) {
        return new NewEstimate(home, callId, visitId, followUpId, facts);
    }
}
