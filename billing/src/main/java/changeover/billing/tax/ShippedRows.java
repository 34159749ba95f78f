package changeover.billing.tax;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/** The rows of a table that comes with the product, each with its source, in the order of its file. */
public final class ShippedRows {

    private ShippedRows() {}

    /** @param file on the class path, with its rows under {@code rows} */
    public static <T> List<T> read(String file, Function<JsonNode, T> row) {
        try (var in = ShippedRows.class.getResourceAsStream(file)) {
            return new ObjectMapper()
                    .readTree(Objects.requireNonNull(in))
                    .get("rows")
                    .valueStream()
                    .map(row)
                    .toList();
        } catch (IOException cause) {
            throw new UncheckedIOException(cause);
        }
    }
}
