package changeover.web.walls;

import changeover.web.walls.Caller.Answer;
import changeover.web.walls.Caller.Sent;
import changeover.web.walls.Caller.Who;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a stranger learns of an address by asking it: a member that nobody asked for is answered with those that are known,
 * and a wrong value with what a right one looks like. So no list of members is kept by hand.
 */
final class Learned {

    static final String UNKNOWN = "walls-unknown";

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Pattern KNOWN = Pattern.compile("Known here: (.*)\\.$");
    private static final Pattern LEAST = Pattern.compile("from (-?[\\d.]+) to");
    private static final Pattern WORDS = Pattern.compile("one of these: ([^.]+)");

    private final Who who;
    private final String method;
    private final String path;
    private final Map<String, String> fixed;
    private final Map<String, String> kinds = new LinkedHashMap<>();
    private final Map<String, List<String>> words = new LinkedHashMap<>();
    private final ObjectNode document = JSON.createObjectNode();

    private Learned(Who who, String method, String path, Map<String, String> fixed) {
        this.fixed = fixed;
        this.who = who;
        this.method = method;
        this.path = path;
    }

    /** @param ids an id of the asker's own for a member of that name */
    static Learned by(Who who, String method, String path, Function<String, String> ids) {
        return by(who, method, path, ids, Map.of());
    }

    private static Learned by(
            Who who, String method, String path, Function<String, String> ids, Map<String, String> fixed) {
        var learned = new Learned(who, method, path, fixed);
        learned.learn(learned.document, "", ids, 0);
        return learned;
    }

    /** Also what is asked only after one word or another: where parts go to, or where they are counted. */
    static List<Learned> each(Who who, String method, String path, Function<String, String> ids) {
        Learned first = by(who, method, path, ids);
        var all = new ArrayList<>(List.of(first));
        first.words.forEach((member, words) ->
                words.forEach(word -> all.add(by(who, method, path, ids, Map.of(member, word)))));
        return all;
    }

    /** Each member by its path ({@code parts[0].invoice}), and the code of what is said about a wrong value. */
    Map<String, String> kinds() {
        return kinds;
    }

    /** A document that is understood, with one member put in. */
    String with(String member, JsonNode value) {
        ObjectNode copy = document.deepCopy();
        ObjectNode at = copy;
        String last = member;
        while (last.contains("[0].")) {
            at = (ObjectNode) at.path(last.substring(0, last.indexOf('['))).path(0);
            last = last.substring(last.indexOf("].") + 2);
        }
        at.set(last, value);
        return copy.toString();
    }

    private void learn(ObjectNode here, String prefix, Function<String, String> ids, int depth) {
        here.put(UNKNOWN, 1);
        if (depth == 0) {
            fixed.forEach(here::put);
        }
        String[] known = ask().sentences.getOrDefault(prefix + UNKNOWN, "").transform(Learned::known);
        here.remove(UNKNOWN);
        for (String member : known) {
            here.put(member, fixed.getOrDefault(prefix + member, "walls"));
        }
        Refused said = withoutWhatShutsOut(here, known);
        for (String member : known) {
            String at = prefix + member;
            String code = said.codes.getOrDefault(at, "");
            if (fixed.containsKey(at) || !here.has(member)) {
                continue;
            }
            kinds.put(at, code);
            if (code.equals("typed.one-of") && depth == 0) {
                words.put(
                        at,
                        List.of(first(WORDS, said.sentences.getOrDefault(at, ""), "walls")
                                .split(", ")));
            }
            if (code.equals("typed.list") && depth < 3) {
                ArrayNode list = here.putArray(member);
                learn(list.addObject(), at + "[0].", ids, depth + 1);
            } else {
                here.set(member, right(member, code, said.sentences.getOrDefault(at, ""), ids));
            }
        }
    }

    /** Where one member stands instead of all the others, the others are learned. */
    private Refused withoutWhatShutsOut(ObjectNode here, String[] known) {
        Refused said = ask();
        for (String member : known) {
            if (!said.shutsOut()) {
                return said;
            }
            JsonNode out = here.remove(member);
            Refused without = ask();
            if (without.shutsOut()) {
                here.set(member, out);
            } else {
                said = without;
            }
        }
        return said;
    }

    private static String[] known(String sentence) {
        Matcher found = KNOWN.matcher(sentence);
        return found.find() && !found.group(1).isBlank() ? found.group(1).split(", ") : new String[0];
    }

    private static JsonNode right(String member, String code, String sentence, Function<String, String> ids) {
        return switch (code) {
            case "typed.id" -> JSON.getNodeFactory().textNode(ids.apply(member));
            case "typed.day" ->
                JSON.getNodeFactory().textNode(LocalDate.now().plusDays(1).toString());
            case "typed.time" -> JSON.getNodeFactory().textNode("09:30");
            case "typed.instant" -> JSON.getNodeFactory().textNode("2026-10-14T09:30:00-04:00");
            case "typed.yes-or-no" -> JSON.getNodeFactory().booleanNode(false);
            case "typed.between" -> number(sentence);
            case "typed.one-of" ->
                JSON.getNodeFactory().textNode(first(WORDS, sentence, "walls").split(", ")[0]);
            default -> {
                String id = ids.apply(member);
                yield JSON.getNodeFactory().textNode(id.isEmpty() ? "walls" : id);
            }
        };
    }

    private static JsonNode number(String sentence) {
        try {
            return JSON.readTree(first(LEAST, sentence, "1"));
        } catch (JsonProcessingException notANumber) {
            throw new IllegalStateException(sentence, notANumber);
        }
    }

    private static String first(Pattern pattern, String text, String otherwise) {
        Matcher found = pattern.matcher(text);
        return found.find() ? found.group(1) : otherwise;
    }

    /** What is said about each member, by its path: the code and the sentence. */
    private record Refused(Map<String, String> codes, Map<String, String> sentences) {
        boolean shutsOut() {
            return codes.containsValue("typed.unknown-member");
        }
    }

    private Refused ask() {
        Answer answer = Caller.ask(who, method, path, Sent.json(document.toString()));
        var said = new Refused(new LinkedHashMap<>(), new LinkedHashMap<>());
        if (answer.status() == 422) {
            try {
                for (JsonNode fault : JSON.readTree(answer.body()).path("refusals")) {
                    String field = fault.path("field").asText();
                    said.codes.putIfAbsent(field, fault.path("code").asText());
                    said.sentences.putIfAbsent(field, fault.path("sentence").asText());
                }
            } catch (JsonProcessingException notJson) {
                throw new IllegalStateException(answer.body(), notJson);
            }
        }
        return said;
    }
}
