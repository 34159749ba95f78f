package changeover.web.office;

import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.scheduling.closeout.Ids;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.closeout.OperationJson;
import changeover.scheduling.closeout.SentOperation;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a correction says, thing by thing, each with the field of the form in which it was said. */
final class CorrectionTold {

    /** One device for all that one form says, so that two of its hours are of one clock. */
    private static final String DEVICE = "desk";

    private static final Pattern PLACE = Pattern.compile("operations\\[(\\d+)](?:\\.(.*))?");

    private final UUID form;
    private final Instant at;
    private final List<SentOperation> sent = new ArrayList<>();
    private final List<UnaryOperator<String>> fields = new ArrayList<>();

    /** @param form the id that was made with the page */
    CorrectionTold(UUID form, Instant at) {
        this.form = form;
        this.at = at;
    }

    /** @param field from the operation's member to the form's field; an empty one is above the form */
    void add(Operation operation, UnaryOperator<String> field) {
        add(operation, at, "", field);
    }

    /** The same, of another hour than the form's own. */
    void add(Operation operation, Instant hour, UnaryOperator<String> field) {
        add(operation, hour, hour.toString(), field);
    }

    private void add(Operation operation, Instant hour, String when, UnaryOperator<String> field) {
        UUID id = Ids.derived(form, operation.kind() + OperationJson.write(operation) + when);
        if (sent.stream().noneMatch(earlier -> earlier.id().equals(id))) {
            sent.add(SentOperation.of(id, DEVICE, sent.size(), hour, operation));
            fields.add(field);
        }
    }

    List<SentOperation> operations() {
        return List.copyOf(sent);
    }

    /** Each refusal at the field in which was said what it refuses. */
    Refused atFields(Refused refused) {
        return new Refused(refused.refusals().stream().map(this::atField).toList());
    }

    private Refusal atField(Refusal refusal) {
        String said = refusal.field() == null ? "" : refusal.field();
        if (said.startsWith("task.")) {
            return refusal.at("outcome" + said.substring(4));
        }
        Matcher place = PLACE.matcher(said);
        if (!place.matches()) {
            return refusal;
        }
        String member = place.group(2) == null ? "" : place.group(2);
        String field = fields.get(Integer.parseInt(place.group(1))).apply(member);
        return field.isEmpty() ? Refusal.of(refusal.code(), refusal.facts()) : refusal.at(field);
    }
}
