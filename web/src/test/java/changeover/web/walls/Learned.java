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
        String[] known = said().getOrDefault(prefix + UNKNOWN, "").transform(Learned::known);
        here.remove(UNKNOWN);
        for (String member : known) {
            here.put(member, fixed.getOrDefault(prefix + member, "walls"));
        }
        leaveOutWhatShutsOut(here, known);
        Map<String, String> codes = codes();
        Map<String, String> sentences = said();
        for (String member : known) {
            String at = prefix + member;
            String code = codes.getOrDefault(at, "");
            if (fixed.containsKey(at) || !here.has(member)) {
                continue;
            }
            kinds.put(at, code);
            if (code.equals("typed.one-of") && depth == 0) {
                words.put(
                        at,
                        List.of(first(WORDS, sentences.getOrDefault(at, ""), "walls")
                                .split(", ")));
            }
            if (code.equals("typed.list") && depth < 3) {
                ArrayNode list = here.putArray(member);
                learn(list.addObject(), at + "[0].", ids, depth + 1);
            } else {
                here.set(member, right(member, code, sentences.getOrDefault(at, ""), ids));
            }
        }
    }

    /** Where one member stands instead of all the others, the others are learned. */
    private void leaveOutWhatShutsOut(ObjectNode here, String[] known) {
        for (String member : known) {
            if (!codes().containsValue("typed.unknown-member")) {
                return;
            }
            JsonNode out = here.remove(member);
            if (codes().containsValue("typed.unknown-member")) {
                here.set(member, out);
            }
        }
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

    private Map<String, String> said() {
        return refusals("sentence");
    }

    private Map<String, String> codes() {
        return refusals("code");
    }

    private Map<String, String> refusals(String what) {
        Answer answer = Caller.ask(who, method, path, Sent.json(document.toString()));
        Map<String, String> all = new LinkedHashMap<>();
        if (answer.status() == 422) {
            try {
                for (JsonNode fault : JSON.readTree(answer.body()).path("refusals")) {
                    all.putIfAbsent(
                            fault.path("field").asText(), fault.path(what).asText());
                }
            } catch (JsonProcessingException notJson) {
                throw new IllegalStateException(answer.body(), notJson);
            }
        }
        return all;
    }
}
