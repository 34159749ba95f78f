package changeover.scheduling.closeout;

import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.catalogue.TicketNeeded;
import changeover.contracts.words.Refusal;
import changeover.scheduling.closeout.Operation.Arrive;
import changeover.scheduling.closeout.Operation.Close;
import changeover.scheduling.closeout.Operation.Found;
import changeover.scheduling.closeout.Operation.HouseholdNote;
import changeover.scheduling.closeout.Operation.Leave;
import changeover.scheduling.closeout.Operation.MachineFound;
import changeover.scheduling.closeout.Operation.Measured;
import changeover.scheduling.closeout.Operation.MinutesTold;
import changeover.scheduling.closeout.Operation.PartTaken;
import changeover.scheduling.closeout.Operation.Photographed;
import changeover.scheduling.closeout.Operation.Received;
import changeover.scheduling.closeout.Operation.TakeBack;
import changeover.scheduling.closeout.Operation.TaskAnswered;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** How operations stand on the wire and in the database. */
public final class OperationJson {

    static final int MINUTES_OF_A_DAY = 24 * 60;

    private static final Set<String> LEVELS =
            Arrays.stream(FindingLevel.values()).map(FindingLevel::code).collect(Collectors.toSet());
    private static final int LONGEST_SERIAL = 80;

    private static final Set<String> CAUSES = Set.of("cold", "other");

    private static final Set<String> OUTCOMES =
            Arrays.stream(Outcome.values()).map(Outcome::code).collect(Collectors.toSet());

    private OperationJson() {}

    /** An operation, or why it does not read. */
    record ReadOperation(@Nullable Operation operation, List<Refusal> refusals) {}

    static ReadOperation read(String kind, JsonNode json) {
        Body body = new Body(json);
        Operation read = operation(kind, body);
        return body.refusals().isEmpty()
                ? new ReadOperation(read, List.of())
                : new ReadOperation(null, List.copyOf(body.refusals()));
    }

    private static @Nullable Operation operation(String kind, Body body) {
        return switch (kind) {
            case "arrive" -> new Arrive();
            case "task" -> task(body);
            case "reading" ->
                new Measured(
                        body.id("task"),
                        body.words("code", Body.LONGEST_LINE),
                        body.words("value", Body.LONGEST_LINE),
                        body.wordsOrNull("unit", Body.LONGEST_LINE),
                        body.wordsOrNull("running", Body.LONGEST_LINE),
                        volts(body),
                        body.idOrNull("instrument"));
            case "finding" -> finding(body);
            case "photo" -> photo(body);
            case "part" -> part(body);
            case "machine" -> MachineJson.read(body);
            case "minutes" -> minutes(body);
            case "note" -> new HouseholdNote(body.words("text", Body.LONGEST_WORDS));
            case "received" -> received(body);
            case "leave" -> new Leave();
            case "close" -> new Close(body.wordsOrNull("short", Body.LONGEST_LINE));
            case "take_back" -> new TakeBack(body.id("operation"));
            default -> {
                body.refuse("operation.kind", "kind", Map.of());
                yield null;
            }
        };
    }

    private static Operation task(Body body) {
        String outcome = body.oneOf("outcome", OUTCOMES);
        String reason = body.wordsOrNull("reason", Body.LONGEST_WORDS);
        if (outcome.equals(Outcome.DEFERRED.code()) && reason == null) {
            body.refuse("deferred-why", "reason", Map.of());
        }
        String cause = body.oneOfOrNull("cause", CAUSES);
        return new TaskAnswered(body.id("task"), Outcome.ofCode(outcome).orElse(Outcome.DONE), reason, cause);
    }

    private static java.math.@Nullable BigDecimal volts(Body body) {
        var volts = body.numberOrNull("volts");
        if (volts != null && (volts.signum() <= 0 || volts.intValue() > 1000)) {
            body.refuse("volts", "volts", Map.of());
        }
        return volts;
    }

    private static Operation finding(Body body) {
        Found found = new Found(
                body.oneOf("level", LEVELS),
                body.wordsOrNull("sentence", Body.LONGEST_LINE),
                body.wordsOrNull("text", Body.LONGEST_WORDS),
                body.oneOfOrNull("language", Set.of("en", "fr")),
                body.idOrNull("equipment"),
                body.idOrNull("task"),
                body.wordsOrNull("toldTo", Body.LONGEST_LINE),
                body.yesOrNull("answer"),
                body.oneOfOrNull("next", Set.of("visit", "estimate")),
                body.oneOfOrNull("ticket", TicketNeeded.KINDS));
        if ((found.sentence() == null) == (found.text() == null)) {
            body.refuse("finding-words", "text", Map.of());
        } else if (found.text() != null && found.language() == null) {
            body.refuse("finding-language", "language", Map.of());
        }
        if (found.level().equals(FindingLevel.DO_NOT_USE.code())
                && (found.toldTo() == null || found.agreed() == null)) {
            body.refuse("do-not-use-answer", found.toldTo() == null ? "toldTo" : "answer", Map.of());
        }
        return found;
    }

    private static Operation photo(Body body) {
        String sha256 = body.words("sha256", Body.LONGEST_LINE);
        if (!sha256.isEmpty() && !sha256.matches("[0-9a-f]{64}")) {
            body.refuse("photo-sha256", "sha256", Map.of());
        }
        return new Photographed(
                sha256, body.idOrNull("finding"), body.idOrNull("task"), body.wordsOrNull("caption", 400));
    }

    private static Operation part(Body body) {
        PartTaken part = new PartTaken(
                body.words("part", Body.LONGEST_LINE),
                body.number("quantity"),
                body.idOrNull("place"),
                body.idOrNull("equipment"),
                body.oneOf("why", Set.of("plan", "repair", "extra", "warranty")),
                body.wordsOrNull("short", Body.LONGEST_LINE),
                body.wordsOrNull("oldSerial", LONGEST_SERIAL),
                body.wordsOrNull("newSerial", LONGEST_SERIAL));
        if (body.refusals().isEmpty()
                && (part.quantity().signum() <= 0
                        || part.quantity().intValue() > 9999
                        || part.quantity().stripTrailingZeros().scale() > 4)) {
            body.refuse("quantity", "quantity", Map.of());
        }
        return part;
    }

    private static Operation minutes(Body body) {
        int onSite = body.whole("minutes", MINUTES_OF_A_DAY);
        int extra = body.wholeOr("extra", MINUTES_OF_A_DAY, 0);
        if (body.refusals().isEmpty() && extra > onSite) {
            body.refuse("extra-minutes", "extra", Map.of("minutes", onSite));
        }
        return new MinutesTold(onSite, extra, body.wordsOrNull("extraWhy", Body.LONGEST_WORDS));
    }

    private static Operation received(Body body) {
        Received received = new Received(
                body.wordsOrNull("by", Body.LONGEST_LINE), body.wordsOrNull("nobodyWhy", Body.LONGEST_WORDS));
        if ((received.by() == null) == (received.nobodyWhy() == null)) {
            body.refuse("received-by", "by", Map.of());
        }
        return received;
    }

    /** The body of an operation, as a form or a program builds it to be sent. */
    public static ObjectNode write(Operation operation) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        switch (operation) {
            case Arrive(), Leave() -> {}
            case TaskAnswered(var task, var outcome, var reason, var cause) ->
                put(put(put(put(json, "task", task), "outcome", outcome.code()), "reason", reason), "cause", cause);
            case Measured(var task, var code, var value, var unit, var running, var volts, var instrument) -> {
                put(put(put(json, "task", task), "code", code), "value", value);
                put(put(put(json, "unit", unit), "running", running), "volts", plain(volts));
                put(json, "instrument", instrument);
            }
            case Found found -> {
                put(put(put(json, "level", found.level()), "sentence", found.sentence()), "text", found.text());
                put(put(json, "language", found.language()), "equipment", found.equipment());
                put(put(put(json, "task", found.task()), "toldTo", found.toldTo()), "next", found.next());
                put(json, "answer", found.agreed() == null ? null : found.agreed() ? "yes" : "no");
                put(json, "ticket", found.ticket());
            }
            case Photographed(var sha256, var finding, var task, var caption) ->
                put(put(put(put(json, "sha256", sha256), "finding", finding), "task", task), "caption", caption);
            case PartTaken part -> {
                put(put(put(json, "part", part.part()), "quantity", plain(part.quantity())), "place", part.place());
                put(put(put(json, "equipment", part.equipment()), "why", part.why()), "short", part.shortWhy());
                put(put(json, "oldSerial", part.oldSerial()), "newSerial", part.newSerial());
            }
            case MachineFound found -> MachineJson.write(found, json);
            case MinutesTold(int onSite, int extra, var extraWhy) ->
                put(json.put("minutes", onSite).put("extra", extra), "extraWhy", extraWhy);
            case HouseholdNote(var text) -> put(json, "text", text);
            case Received(var by, var nobodyWhy) -> put(put(json, "by", by), "nobodyWhy", nobodyWhy);
            case Close(var shortWhy) -> put(json, "short", shortWhy);
            case TakeBack(var earlier) -> put(json, "operation", earlier);
        }
        return json;
    }

    private static @Nullable String plain(java.math.@Nullable BigDecimal number) {
        return number == null ? null : number.toPlainString();
    }

    private static ObjectNode put(ObjectNode json, String field, @Nullable Object value) {
        return value == null ? json : json.put(field, value.toString());
    }
}
