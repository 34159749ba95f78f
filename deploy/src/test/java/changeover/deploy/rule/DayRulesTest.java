package changeover.deploy.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Days off and visits, asked with days of one's own. */
class DayRulesTest {

    /** In Quebec the holiday before 25 May falls on the 18th in 2026, since the 25th itself is a Monday. */
    @Test
    void patriots_day_of_2026_is_the_18th_of_may() {
        Set<String> days = new TreeSet<>();
        Asked.answer("holidays", "{\"place\":\"CA-QC\",\"year\":2026}")
                .get("holidays")
                .forEach(day -> days.add(day.get("day").asText()));
        assertTrue(days.contains("2026-05-18"), days.toString());
        assertTrue(!days.contains("2026-05-25"), days.toString());
    }

    @Test
    void what_is_not_known_is_refused_by_its_name() {
        Asked.refused(
                "holidays",
                "{\"place\":\"CA-XX\",\"year\":2026}",
                "No holidays are known for CA-XX; a business there writes down its own closed days.");
        String machine = "{\"term\":{\"from\":\"2027-04-01\"},\"visits\":1,\"equipment\":[{%s}]}";
        Asked.refused(
                "visitplan",
                machine.formatted("\"kind\":\"gas-furnce\""),
                "The catalogue has no kind of equipment gas-furnce.");
        Asked.refused(
                "visitplan",
                machine.formatted("\"kind\":\"gas-furnace\",\"tasks\":[\"polish\"]"),
                "The catalogue has no task polish.");
        Asked.refused(
                "windows",
                "{\"cadence\":{\"how\":\"now-and-then\"},\"term\":{\"from\":\"2027-04-01\"}}",
                "cadence is none of those that deploy/rule windows --help shows: {\"how\":\"now-and-then\"}.");
    }

    @Test
    void a_plan_asked_twice_is_the_same_and_moves_no_pin() {
        long seed = Long.getLong("changeover.seed", System.nanoTime());
        System.out.println("visitplan seed=" + seed);
        Random random = new Random(seed);
        for (int round = 0; round < 200; round++) {
            Set<String> pins = new TreeSet<>();
            for (int pin = 0; pin < random.nextInt(3); pin++) {
                pins.add(day(random).toString());
            }
            String input = input(random, pins);
            JsonNode answer = Asked.answer("visitplan", input);
            assertEquals(answer, Asked.answer("visitplan", input));
            List<String> pinned = new ArrayList<>();
            answer.get("visits").forEach(visit -> {
                if (visit.get("pinned").asBoolean()) {
                    LocalDate from = LocalDate.parse(visit.get("from").asText());
                    assertEquals(from.plusDays(1).toString(), visit.get("until").asText(), input);
                    pinned.add(from.toString());
                }
            });
            assertEquals(List.copyOf(pins), pinned.stream().sorted().toList(), input);
        }
    }

    private static String input(Random random, Set<String> pins) {
        List<String> promises = new ArrayList<>();
        for (int promise = 0; promise < 1 + random.nextInt(8); promise++) {
            LocalDate from = day(random);
            promises.add("{\"name\":\"work " + promise + "\",\"from\":\"" + from + "\",\"until\":\""
                    + from.plusDays(1 + random.nextInt(90)) + "\",\"minutes\":" + random.nextInt(90) + "}");
        }
        List<String> pinned =
                pins.stream().map(day -> "{\"day\":\"" + day + "\"}").toList();
        return "{\"visits\":" + random.nextInt(4) + ",\"term\":{\"from\":\"2027-04-01\",\"months\":12},\"promises\":"
                + promises + ",\"pinned\":" + pinned + "}";
    }

    private static LocalDate day(Random random) {
        return LocalDate.of(2027, 4, 1).plusDays(random.nextInt(300));
    }
}
