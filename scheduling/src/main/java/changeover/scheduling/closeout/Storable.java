package changeover.scheduling.closeout;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.regex.Pattern;

/** What a device said, so that it can be kept whatever it was: letters no table holds are replaced, the endless is cut. */
final class Storable {

    static final int LONGEST_BODY = 32_768;

    private static final Pattern UNREADABLE = Pattern.compile("[\\p{Cc}&&[^\\n\\r\\t]]|\\p{Cs}");
    private static final Instant EARLIEST = Instant.parse("1900-01-01T00:00:00Z");
    private static final Instant LATEST = Instant.parse("2200-01-01T00:00:00Z");

    private Storable() {}

    static String line(String said, int longest) {
        String readable = UNREADABLE.matcher(said).replaceAll("\uFFFD").strip();
        String cut = readable.length() <= longest ? readable : readable.substring(0, longest);
        return cut.isEmpty() ? "?" : cut;
    }

    /** A clock that is off by centuries is not kept. */
    static Instant instant(Instant at, Instant otherwise) {
        return at.isBefore(EARLIEST) || at.isAfter(LATEST) ? otherwise : at;
    }

    static boolean isTooLong(JsonNode body) {
        return body.toString().length() > LONGEST_BODY;
    }

    static String body(JsonNode body) {
        if (isTooLong(body)) {
            return "{\"cut\":true}";
        }
        return copy(body).toString();
    }

    private static JsonNode copy(JsonNode node) {
        var make = JsonNodeFactory.instance;
        if (node.isObject()) {
            ObjectNode object = make.objectNode();
            node.properties().forEach(field -> object.set(line(field.getKey(), 200), copy(field.getValue())));
            return object;
        }
        if (node.isArray()) {
            var array = make.arrayNode();
            node.forEach(item -> array.add(copy(item)));
            return array;
        }
        if (node.isBoolean() || node.isNull() || node.isIntegralNumber() && node.canConvertToLong()) {
            return node;
        }
        return make.textNode(UNREADABLE.matcher(node.asText()).replaceAll("\uFFFD"));
    }
}
