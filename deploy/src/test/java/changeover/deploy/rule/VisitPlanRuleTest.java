package changeover.deploy.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The year of a home, asked from the command line. */
class VisitPlanRuleTest {

    @Test
    void everyTaskSaysItsWindowItsRuleAndItsSource() {
        JsonNode answer = Asked.answer("visitplan", """
                {"visits": 2, "term": {"from": "2027-04-01", "months": 12},
                 "equipment": [{"name": "pump", "kind": "heat-pump", "tasks": ["coil-dust"], "lastDone": {"coil-dust": "2026-06-01"}}],
                 "promises": [{"name": "pads", "from": "2027-05-01", "until": "2027-07-01", "minutes": 30,
                               "basis": "label on the machine", "source": "its manual, page 12"}]}""");
        JsonNode tasks = answer.get("visits").get(0).get("tasks");
        JsonNode pads = tasks.get(0);
        JsonNode coil = tasks.get(1);
        assertEquals("pads", pads.get("task").asText());
        assertEquals("label on the machine", pads.get("basis").asText());
        assertEquals("its manual, page 12", pads.get("source").asText());
        assertEquals("coil-dust", coil.get("task").asText());
        assertEquals("every-months", coil.get("rule").get("how").asText());
        assertEquals("common practice", coil.get("basis").asText());
        assertTrue(coil.get("reason").get("en").asText().contains("last done 1\u00a0June 2026"), coil.toString());
        assertEquals("fewest", answer.get("proof").asText());
        assertEquals(1, answer.get("needed").get("visits").asInt());
        assertEquals(
                "Your plan gives this visit; nothing else falls due at it.",
                answer.get("visits").get(1).get("why").get("en").asText());
    }

    @Test
    void noVisitIsLongerThanTheBoundSaveTheOneTaskThatIs() {
        String year = "{\"visits\": %d, \"term\": {\"from\": \"2027-04-01\"}, \"minutesAtMost\": 90, \"promises\": ["
                + work("burner", 120) + "," + work("coil", 60) + "," + work("drain", 45) + "," + work("pads", 30)
                + "]}";
        JsonNode answer = Asked.answer("visitplan", year.formatted(3));
        List<Integer> minutes = new ArrayList<>();
        answer.get("visits").forEach(visit -> {
            minutes.add(visit.get("minutes").asInt());
            assertEquals(visit.get("minutes").asInt() > 90, visit.has("longer"));
        });
        Collections.sort(minutes);
        assertEquals(3, answer.get("needed").get("visits").asInt());
        assertEquals(255, minutes.stream().mapToInt(Integer::intValue).sum());
        assertEquals(120, minutes.getLast());
        JsonNode two = Asked.answer("visitplan", year.formatted(2));
        assertEquals(1, two.get("unkept").size());
        assertTrue(
                two.get("unkept").get(0).get("why").get("fr").asText().contains("de 90\u00a0minutes au plus"),
                two.toString());
    }

    private static String work(String name, int minutes) {
        return "{\"name\":\"" + name + "\",\"from\":\"2027-05-01\",\"until\":\"2027-06-01\",\"minutes\":" + minutes
                + "}";
    }

    @Test
    void anAnswerGivenBackWithADayForEachVisitChangesNothing() {
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            ObjectNode question = question(random);
            JsonNode answer = Asked.answer("visitplan", question.toString());
            ArrayNode shuffled = Answers.JSON.createArrayNode();
            List<JsonNode> promises = new ArrayList<>();
            question.get("promises").forEach(promises::add);
            Collections.shuffle(promises, random);
            promises.forEach(shuffled::add);
            question.set("promises", shuffled);
            assertEquals(answer, Asked.answer("visitplan", question.toString()), question.toString());
            ArrayNode pinned = question.putArray("pinned");
            answer.get("visits")
                    .forEach(visit -> pinned.addObject()
                            .put("day", visit.get("from").asText())
                            .<ObjectNode>set("tasks", visit.get("tasks")));
            JsonNode again = Asked.answer("visitplan", question.toString());
            assertEquals(unkept(answer), unkept(again), question.toString());
            assertEquals(held(answer), held(again), question.toString());
        }
    }

    private static List<String> held(JsonNode answer) {
        List<String> held = new ArrayList<>();
        answer.get("visits").forEach(visit -> held.add(visit.get("from").asText() + " " + visit.get("tasks")));
        Collections.sort(held);
        return held;
    }

    /** The sentence says which visits are near, and that depends on their days. */
    private static List<String> unkept(JsonNode answer) {
        List<String> unkept = new ArrayList<>();
        answer.get("unkept")
                .forEach(one -> unkept.add(
                        one.get("task").asText() + " " + one.get("from").asText()));
        return unkept;
    }

    private static ObjectNode question(Random random) {
        ObjectNode question = Answers.object().put("visits", random.nextInt(5));
        question.putObject("term").put("from", "2027-04-01").put("months", 12);
        if (random.nextBoolean()) {
            question.put("minutesAtMost", 60 + random.nextInt(120));
        }
        ArrayNode promises = question.putArray("promises");
        for (int number = 0; number < 1 + random.nextInt(9); number++) {
            LocalDate from = LocalDate.of(2027, 4, 1).plusDays(random.nextInt(300));
            promises.addObject()
                    .put("name", "work " + number)
                    .put("from", from.toString())
                    .put("until", from.plusDays(1 + random.nextInt(90)).toString())
                    .put("minutes", random.nextInt(90));
        }
        return question;
    }

    @Test
    void whatCannotBeAskedIsAnsweredInASentence() {
        String of = "{\"visits\":1,\"term\":{\"from\":\"2027-04-01\"},";
        Asked.refused("visitplan", of + "\"minutesAtMost\":0}", "A visit needs at least a minute, not 0.");
        Asked.refused(
                "visitplan",
                of + "\"promises\":[{\"from\":\"2027-05-01\",\"until\":\"2027-06-01\",\"minutes\":-5}]}",
                "minutes must be from 0 to 100000 in promises, not -5.");
        Asked.refused(
                "visitplan",
                of + "\"pinned\":[{\"day\":\"2027-05-01\",\"tasks\":[{\"task\":\"pads\"}]}]}",
                "Nothing promised is called pads, or a visit holds it already; the visit of 2027-05-01 cannot hold it.");
    }
}
