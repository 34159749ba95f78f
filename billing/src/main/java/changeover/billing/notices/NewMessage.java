package changeover.billing.notices;

import changeover.billing.documents.Wanted;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A message to write: about what, to whom, in which words. The same thing is written to the same customer once.
 *
 * @param kind invoice, credit, report, offer, or a later room's own word
 * @param aboutId the invoice, visit or agreement it is about
 * @param aboutVersion which version of it; a corrected report is another message
 * @param attached papers that the message waits for
 */
public record NewMessage(
        String kind,
        UUID aboutId,
        int aboutVersion,
        @Nullable UUID homeId,
        Recipient to,
        String subject,
        String body,
        List<Wanted> attached) {

    public NewMessage {
        attached = List.copyOf(attached);
    }
}
