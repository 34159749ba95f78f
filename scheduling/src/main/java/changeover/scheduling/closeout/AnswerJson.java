package changeover.scheduling.closeout;

import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Keeps the refusals of an operation, so that the same operation gets the same answer in either language. */
final class AnswerJson {

    static final ObjectMapper JSON = new ObjectMapper();

    private AnswerJson() {}

    static String write(List<Refusal> refusals) {
        ObjectNode answer = JSON.createObjectNode();
        ArrayNode list = answer.putArray("refusals");
        for (Refusal refusal : refusals) {
            ObjectNode one = list.addObject().put("code", refusal.code()).put("field", refusal.field());
            ObjectNode facts = one.putObject("facts");
            refusal.facts().forEach((name, fact) -> {
                if (fact instanceof Wording(String en, String fr)) {
                    facts.putObject(name).put("en", en).put("fr", fr);
                } else {
                    facts.put(name, String.valueOf(fact));
                }
            });
        }
        return answer.toString();
    }

    static List<Refusal> read(String json) {
        List<Refusal> refusals = new ArrayList<>();
        for (JsonNode one : tree(json).path("refusals")) {
            Map<String, Object> facts = new HashMap<>();
            one.path("facts").properties().forEach(fact -> facts.put(fact.getKey(), fact(fact.getValue())));
            JsonNode field = one.path("field");
            refusals.add(new Refusal(one.path("code").asText(), field.isTextual() ? field.asText() : null, facts));
        }
        return refusals;
    }

    static JsonNode tree(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException notOurs) {
            throw new IllegalStateException("a kept document does not read", notOurs);
        }
    }

    private static Object fact(JsonNode fact) {
        return fact.isObject()
                ? new Wording(fact.path("en").asText(), fact.path("fr").asText())
                : fact.asText();
    }
}
