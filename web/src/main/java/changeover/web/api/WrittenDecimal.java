package changeover.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** A decimal in a JSON document: a number or a text, with a point, without an exponent and nothing between thousands. */
final class WrittenDecimal {

    private static final int MOST_LETTERS = 30;

    private WrittenDecimal() {}

    /** Null for what is none. */
    static @Nullable BigDecimal of(JsonNode value) {
        String text = value.isTextual() ? value.textValue() : value.isNumber() ? value.asText() : "";
        return text.length() <= MOST_LETTERS && text.matches("-?\\d{1,15}(\\.\\d{1,9})?") ? new BigDecimal(text) : null;
    }
}
