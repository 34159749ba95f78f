package changeover.scheduling.closeout;

import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Reads a post of operations: {@code {"operations": [{"visit", "id", "device", "sequence", "at", "basedOn", "kind", "body"}]}}. */
public final class SentOperations {

    /** A day of one technician is some hundreds. */
    static final int MOST = 2000;

    private final Instant now;
    private final List<Refusal> refusals = new ArrayList<>();

    private SentOperations(Instant now) {
        this.now = now;
    }

    /** The operations about one visit, in the order they were sent. */
    public record ForVisit(UUID visitId, List<SentOperation> operations) {}

    /**
     * @param visit the visit they are about when they do not name it themselves; null when they do
     * @param now for an operation without a time
     * @throws Refused when an envelope does not read; a body that does not read is answered with its operation
     */
    public static List<ForVisit> read(JsonNode post, @Nullable UUID visit, Instant now) {
        JsonNode list = post.isArray() ? post : post.path("operations");
        if (!list.isArray()) {
            throw Refusal.of("closeout.operation.list").at("operations").thrown();
        }
        if (list.size() > MOST) {
            throw Refusal.of("closeout.operation.too-many", Map.of("most", MOST))
                    .at("operations")
                    .thrown();
        }
        var reader = new SentOperations(now);
        Map<UUID, List<SentOperation>> byVisit = new LinkedHashMap<>();
        for (int i = 0; i < list.size(); i++) {
            reader.read(list.get(i), visit, "operations[" + i + "].", byVisit);
        }
        if (!reader.refusals.isEmpty()) {
            throw new Refused(reader.refusals);
        }
        return byVisit.entrySet().stream()
                .map(entry -> new ForVisit(entry.getKey(), entry.getValue()))
                .toList();
    }

    private void read(JsonNode json, @Nullable UUID visit, String place, Map<UUID, List<SentOperation>> byVisit) {
        Body envelope = new Body(json);
        UUID about = visit == null ? envelope.id("visit") : visit;
        JsonNode body = json.path("body");
        SentOperation sent = new SentOperation(
                envelope.id("id"),
                envelope.words("device", Body.LONGEST_LINE),
                sequence(json.path("sequence"), envelope),
                at(envelope.wordsOrNull("at", Body.LONGEST_LINE), envelope),
                envelope.idOrNull("basedOn"),
                envelope.words("kind", Body.LONGEST_LINE),
                body.isMissingNode() || body.isNull() ? JsonNodeFactory.instance.objectNode() : body);
        envelope.refusals().forEach(refusal -> refusals.add(refusal.at(place + refusal.field())));
        if (envelope.refusals().isEmpty()) {
            byVisit.computeIfAbsent(about, _ -> new ArrayList<>()).add(sent);
        }
    }

    private static long sequence(JsonNode sequence, Body envelope) {
        if (sequence.isMissingNode() || sequence.isNull()) {
            return 0;
        }
        String said = sequence.asText();
        if (said.matches("\\d{1,15}")) {
            return Long.parseLong(said);
        }
        envelope.refuse("operation.whole", "sequence", Map.of("most", 999_999_999));
        return 0;
    }

    private Instant at(@Nullable String said, Body envelope) {
        if (said == null) {
            return now;
        }
        try {
            return OffsetDateTime.parse(said).toInstant();
        } catch (DateTimeException unreadable) {
            envelope.refuse("operation.instant", "at", Map.of());
            return now;
        }
    }
}
