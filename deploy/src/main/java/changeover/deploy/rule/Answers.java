package changeover.deploy.rule;

import changeover.contracts.calendar.Window;
import changeover.contracts.words.Wording;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** How answers are written. */
final class Answers {
    static final ObjectMapper JSON = new ObjectMapper();

    private Answers() {}

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    /** The first day in and, as everywhere, the first day out. */
    static ObjectNode window(Window window) {
        return object().put("from", window.from().toString())
                .put("until", window.until().toString());
    }

    static ObjectNode wording(Wording wording) {
        return object().put("en", wording.en()).put("fr", wording.fr());
    }
}
