package changeover.web.api;

import changeover.contracts.words.Refusal;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** A list of texts in a document, and a list of ids; none when the member is missing. */
final class AskedTexts {

    private static final int MOST = 10_000;

    private AskedTexts() {}

    static List<String> of(Asked asked, String member) {
        JsonNode value = asked.value(member);
        if (value == null) {
            return List.of();
        }
        if (!value.isArray() || value.size() > MOST || !all(value)) {
            asked.refuse(Refusal.of("typed.list-of-texts").at(asked.path() + member));
            return List.of();
        }
        List<String> texts = new ArrayList<>();
        value.forEach(one -> texts.add(one.textValue()));
        return texts;
    }

    static List<UUID> ids(Asked asked, String member) {
        List<UUID> ids = new ArrayList<>();
        for (String text : of(asked, member)) {
            try {
                ids.add(UUID.fromString(text));
            } catch (IllegalArgumentException notAnId) {
                asked.refuse(Refusal.of("typed.id").at(asked.path() + member));
            }
        }
        return ids;
    }

    private static boolean all(JsonNode list) {
        for (JsonNode one : list) {
            if (!one.isTextual()) {
                return false;
            }
        }
        return true;
    }
}
