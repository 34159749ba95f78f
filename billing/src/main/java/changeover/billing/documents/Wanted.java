package changeover.billing.documents;

import java.util.UUID;

/**
 * A paper that somebody needs: of what, and which version of it.
 *
 * @param version 1 at first; a corrected visit's report gets 2
 */
public record Wanted(PaperKind kind, UUID ofId, int version) {

    public static Wanted of(PaperKind kind, UUID ofId) {
        return new Wanted(kind, ofId, 1);
    }
}
