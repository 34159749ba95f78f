package changeover.billing.invoices;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;

/** Seller, buyer and places as the text that is hashed and kept; a field added later is null in an older text. */
final class Json {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private Json() {}

    static String of(Object value) {
        try {
            return MAPPER.writeValueAsString(value);
        } catch (JsonProcessingException cause) {
            throw new IllegalStateException(cause);
        }
    }

    static <T> T read(String text, Class<T> type) {
        try {
            return MAPPER.readValue(text, type);
        } catch (JsonProcessingException cause) {
            throw new IllegalStateException(cause);
        }
    }

    static List<WorkPlace> works(String text) {
        try {
            return MAPPER.readValue(text, new TypeReference<List<WorkPlace>>() {});
        } catch (JsonProcessingException cause) {
            throw new IllegalStateException(cause);
        }
    }
}
