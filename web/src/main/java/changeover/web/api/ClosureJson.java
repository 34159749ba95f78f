package changeover.web.api;

import changeover.contracts.words.Refusal;
import changeover.scheduling.closeout.Ids;
import changeover.scheduling.closeout.SentOperation;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** A whole closure in one document, taken apart into the operations that it stands for. */
final class ClosureJson {

    private static final String DEVICE = "api";

    private final UUID request;
    private final Instant now;
    private Instant at;
    private final Asked asked;
    private final List<SentOperation> sent = new ArrayList<>();

    /** @param request the id of the request, from which the operations' ids are derived */
    ClosureJson(UUID request, Instant at, Asked asked) {
        this.request = request;
        this.now = at;
        this.at = at;
        this.asked = asked;
    }

    /** @param checklist the visit's tasks, for the outcome of those that the document does not name */
    List<SentOperation> read(List<UUID> checklist) {
        arrival();
        Set<UUID> named = new HashSet<>();
        for (Asked task : asked.each("tasks")) {
            UUID id = task.id("task");
            named.add(id);
            ObjectNode body = body().put("task", id.toString()).put("outcome", task.text("outcome", 40));
            copy(task, body, "reason");
            copy(task, body, "cause");
            task.nothingElse();
            say("task", body);
        }
        if (asked.value("others") != null) {
            String outcome = asked.text("others", 40);
            checklist.stream()
                    .filter(id -> !named.contains(id))
                    .forEach(id -> say("task", body().put("task", id.toString()).put("outcome", outcome)));
        }
        each("readings", "reading", "task", "code", "value", "unit", "running", "volts", "instrument");
        each(
                "findings",
                "finding",
                "level",
                "sentence",
                "text",
                "language",
                "equipment",
                "task",
                "toldTo",
                "answer",
                "next",
                "ticket");
        each("parts", "part", "part", "quantity", "place", "equipment", "why", "short", "oldSerial", "newSerial");
        minutes();
        if (asked.value("note") != null) {
            say("note", body().put("text", asked.text("note", 4000)));
        }
        received();
        say("close", body());
        return sent;
    }

    /** Now, or when they came and left as paper says: both or neither. */
    private void arrival() {
        Instant arrived = hour("arrivedAt");
        Instant left = hour("leftAt");
        if (arrived != null && left != null) {
            if (left.isBefore(arrived)) {
                asked.refuse(Refusal.of("closeout.paper-left-before").at("leftAt"));
            }
            at = left;
            say("arrive", body(), arrived);
            say("leave", body());
            return;
        }
        if ((asked.value("arrivedAt") == null) != (asked.value("leftAt") == null)) {
            asked.refuse(Refusal.of("closeout.paper-both-times").at(arrived == null ? "arrivedAt" : "leftAt"));
        }
        say("arrive", body());
    }

    private @Nullable Instant hour(String member) {
        Instant hour = AskedInstant.of(asked, member);
        if (hour != null && hour.isAfter(now)) {
            asked.refuse(Refusal.of("closeout.paper-to-come").at(member));
        }
        return hour;
    }

    private void each(String list, String kind, String... members) {
        for (Asked one : asked.each(list)) {
            ObjectNode body = body();
            for (String member : members) {
                copy(one, body, member);
            }
            one.nothingElse();
            say(kind, body);
        }
    }

    private void minutes() {
        if (asked.value("minutes") == null) {
            return;
        }
        ObjectNode body = body().put("minutes", asked.whole("minutes", 0, 1440));
        if (asked.value("extraMinutes") != null) {
            body.put("extra", asked.whole("extraMinutes", 0, 1440));
        }
        if (asked.value("extraWhy") != null) {
            body.put("extraWhy", asked.text("extraWhy", 500));
        }
        say("minutes", body);
    }

    private void received() {
        ObjectNode body = body();
        if (asked.value("receivedBy") != null) {
            body.put("by", asked.text("receivedBy", 200));
        }
        if (asked.value("nobodyWhy") != null) {
            body.put("nobodyWhy", asked.text("nobodyWhy", 500));
        }
        if (!body.isEmpty()) {
            say("received", body);
        }
    }

    private static void copy(Asked from, ObjectNode into, String member) {
        JsonNode value = from.value(member);
        if (value != null) {
            into.set(member, value);
        }
    }

    private static ObjectNode body() {
        return JsonNodeFactory.instance.objectNode();
    }

    private void say(String kind, ObjectNode body) {
        say(kind, body, at);
    }

    private void say(String kind, ObjectNode body, Instant hour) {
        int place = sent.size();
        sent.add(new SentOperation(Ids.derived(request, kind + "-" + place), DEVICE, place, hour, null, kind, body));
    }
}
