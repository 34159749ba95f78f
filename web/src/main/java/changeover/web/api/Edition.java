package changeover.web.api;

import changeover.contracts.words.FilledOn;
import changeover.contracts.words.Refusal;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.Response;
import org.jspecify.annotations.Nullable;

/** Which edition of a thing two people may both hold: its ETag, and the If-Match of whoever changes it. */
final class Edition {

    private Edition() {}

    static Response of(Object document, int version) {
        return Response.ok(document).tag(new EntityTag(String.valueOf(version))).build();
    }

    /** @throws changeover.contracts.words.Refused when no edition was named, or another than the current one */
    static FilledOn filledOn(@Nullable String ifMatch) {
        String bare = ifMatch == null ? "" : ifMatch.strip().replace("W/", "").replace("\"", "");
        if (!bare.matches("\\d{1,9}")) {
            throw Refusal.of("session.if-match").thrown();
        }
        return new FilledOn(Integer.parseInt(bare));
    }
}
