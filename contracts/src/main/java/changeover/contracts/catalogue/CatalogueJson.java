package changeover.contracts.catalogue;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** How the catalogue's data is written and read, in the jar and in a business's own rows. */
public final class CatalogueJson {

    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .addModule(new JavaTimeModule())
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .serializationInclusion(JsonInclude.Include.NON_NULL)
            .build();

    private CatalogueJson() {}

    public static String write(Object value) {
        try {
            return MAPPER.writeValueAsString(value);
        } catch (JsonProcessingException cause) {
            throw new IllegalArgumentException(cause.getOriginalMessage(), cause);
        }
    }

    /** @throws IllegalArgumentException when the text is not of that type */
    public static <T> T read(String json, Class<T> type) {
        try {
            return MAPPER.readValue(json, type);
        } catch (JsonProcessingException cause) {
            throw new IllegalArgumentException(cause.getOriginalMessage(), cause);
        }
    }

    static <T> List<T> resource(String name, TypeReference<List<T>> type) {
        try (InputStream in = CatalogueJson.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the jar has no " + name);
            }
            return MAPPER.readValue(in, type);
        } catch (IOException cause) {
            throw new UncheckedIOException(name, cause);
        }
    }
}
