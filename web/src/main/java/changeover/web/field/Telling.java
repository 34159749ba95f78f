package changeover.web.field;

import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.scheduling.closeout.CloseOut;
import changeover.scheduling.closeout.DaySheet.Said;
import changeover.scheduling.closeout.Ids;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.closeout.OperationJson;
import changeover.scheduling.closeout.SentOperation;
import changeover.web.session.Typed;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What one form says, as operations: what stands already is not said again, and the same form posted twice changes
 * nothing, for the ids come from the form and from what it says.
 */
final class Telling {

    private static final String DEVICE = "page";
    private static final Pattern PLACE = Pattern.compile("operations\\[(\\d+)](?:\\.(.*))?");

    private final UUID form;
    private final Instant at;
    private final List<SentOperation> sent = new ArrayList<>();
    private final List<UnaryOperator<String>> fields = new ArrayList<>();

    /** @param form the id that was made with the page */
    Telling(UUID form, Instant at) {
        this.form = form;
        this.at = at;
    }

    /** The form's id as it came, so that the form shown again is the same form; a new one when it does not read. */
    static UUID form(Typed typed) {
        return Optional.ofNullable(typed.line("made", 36)).flatMap(Ids::read).orElseGet(UUID::randomUUID);
    }

    /** Says something that comes on top of what was said. */
    void add(Operation operation, UnaryOperator<String> field) {
        say(operation, "", at, field);
    }

    /** The same, of another hour than the form's own. */
    void add(Operation operation, Instant hour, UnaryOperator<String> field) {
        say(operation, hour.toString(), hour, field);
    }

    /** Says something in the place of what stands; nothing when that is the same. */
    boolean replace(Operation operation, @Nullable Said standing, UnaryOperator<String> field) {
        if (standing != null && same(OperationJson.write(operation), standing.body())) {
            return false;
        }
        say(operation, standing == null ? "" : standing.id().toString(), at, field);
        return true;
    }

    private void say(Operation operation, String after, Instant hour, UnaryOperator<String> field) {
        JsonNode body = OperationJson.write(operation);
        UUID id = Ids.derived(form, operation.kind() + body + after);
        sent.add(SentOperation.of(id, DEVICE, sent.size(), hour, operation));
        fields.add(field);
    }

    /** Tells it all or nothing; each refusal comes back at the form's own field. */
    void tell(CloseOut closeOut, UUID visit, UUID by) {
        if (sent.isEmpty()) {
            return;
        }
        try {
            closeOut.applyWhole(visit, sent, by);
        } catch (Refused refused) {
            throw new Refused(refused.refusals().stream().map(this::atField).toList());
        }
    }

    private Refusal atField(Refusal refusal) {
        Matcher place = PLACE.matcher(refusal.field() == null ? "" : refusal.field());
        if (!place.matches()) {
            return refusal;
        }
        String inBody = place.group(2) == null ? "" : place.group(2);
        String field = fields.get(Integer.parseInt(place.group(1))).apply(inBody);
        return field.isEmpty() ? Refusal.of(refusal.code(), refusal.facts()) : refusal.at(field);
    }

    private static boolean same(JsonNode body, Map<String, Object> standing) {
        return body.size() == standing.size()
                && body.properties().stream()
                        .allMatch(one -> one.getValue().asText().equals(String.valueOf(standing.get(one.getKey()))));
    }
}
