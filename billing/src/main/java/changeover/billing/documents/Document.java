package changeover.billing.documents;

import java.time.Instant;
import java.util.UUID;

/**
 * A paper that was made and is kept; it never changes.
 *
 * @param sha256 of the bytes, in hexadecimal
 */
public record Document(
        PaperKind kind,
        UUID ofId,
        int version,
        String mediaType,
        String fileName,
        String language,
        String sha256,
        byte[] bytes,
        Instant madeAt) {}
