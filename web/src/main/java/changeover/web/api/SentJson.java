package changeover.web.api;

import changeover.scheduling.closeout.SentOperation;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;

/** One operation as a device sends it, out of its JSON. */
final class SentJson {

    private SentJson() {}

    static SentOperation read(Asked one) {
        JsonNode body = one.value("body");
        var sent = new SentOperation(
                one.id("id"),
                one.text("device", 100),
                one.value("sequence") == null ? 0 : one.whole("sequence", 0, Integer.MAX_VALUE),
                at(one),
                one.idOrNone("basedOn"),
                one.text("kind", 40),
                body == null ? JsonNodeFactory.instance.objectNode() : body);
        one.nothingElse();
        return sent;
    }

    private static Instant at(Asked one) {
        String said = one.text("at", 40);
        try {
            return said.isEmpty() ? Instant.EPOCH : OffsetDateTime.parse(said).toInstant();
        } catch (DateTimeException notAnInstant) {
            one.refuse(changeover.contracts.words.Refusal.of("typed.instant").at(one.path() + "at"));
            return Instant.EPOCH;
        }
    }
}
