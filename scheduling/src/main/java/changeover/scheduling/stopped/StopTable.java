package changeover.scheduling.stopped;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/** The rows about stopped machines that come with the product, in the order of their file. */
final class StopTable {

    private StopTable() {}

    static <T> List<T> read(String list, Function<JsonNode, T> row) {
        try (var in = StopTable.class.getResourceAsStream("/changeover/scheduling/stops.json")) {
            return new ObjectMapper()
                    .readTree(Objects.requireNonNull(in))
                    .get(list)
                    .valueStream()
                    .map(row)
                    .toList();
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }

    static List<String> words(JsonNode row, String member) {
        JsonNode words = row.get(member);
        return words == null
                ? List.of()
                : words.valueStream().map(JsonNode::asText).toList();
    }
}
