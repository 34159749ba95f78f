package changeover.deploy.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.catalogue.Catalogue;
import changeover.contracts.catalogue.Who;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What it costs to keep a plan, asked from the command line. */
class PlanCostRuleTest {

    /**
     * The furnace and filter in two visits; 57.00 an hour, 15 minutes of set-up, 39 minutes there and back, a filter at 15.75,
     * a fifth of overhead, and a price that leaves 35 % of itself.
     */
    @Test
    void a_plan_costs_what_its_visits_take() {
        JsonNode answer = Asked.answer("plancost", new PlanCostRule().example());
        assertEquals(2, answer.get("visits").size());
        int tasks = answer.get("visits").get(0).asInt()
                + answer.get("visits").get(1).asInt();
        assertEquals(tasks, answer.at("/minutes/tasks").asInt());
        assertEquals(30, answer.at("/minutes/setUp").asInt());
        assertEquals(78, answer.at("/minutes/travel").asInt());
        assertEquals("28.50", answer.at("/causes/set-up").asText());
        assertEquals("74.10", answer.at("/causes/travel").asText());
        assertEquals(0, answer.get("missing").size());
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode cause : answer.get("causes")) {
            sum = sum.add(new BigDecimal(cause.asText()));
        }
        assertEquals(sum.toPlainString(), answer.get("cost").asText());
        assertEquals(1, answer.at("/spread/visits").asInt());
        assertEquals(true, answer.at("/spread/restsOnLittle").asBoolean());
        assertEquals(answer, Asked.answer("plancost", new PlanCostRule().example()));
    }

    @Test
    void a_plan_of_which_nothing_is_known_costs_nothing_silently_never() {
        JsonNode answer = Asked.answer("plancost", """
                {"visits": 1, "term": {"from": "2027-04-01"}, "margin": "30", "equipment": [{"kind": "gas-furnace"}]}""");
        assertEquals(
                "[\"hour\",\"set-up\",\"trip\",\"overhead\"]",
                answer.get("missing").toString());
        assertEquals(true, answer.get("priceForMargin").isNull());
        Asked.refusedInASentence("plancost", """
                {"visits": 1, "term": {"from": "2027-04-01"}, "hour": "57", "setUpMinutes": 0, "trip": "0", "overheadPercent": "0",
                 "margin": "100", "equipment": [{"kind": "gas-furnace"}]}""");
    }

    /** Twice the minutes and twice the set-up; a trip that the price book prices is one, however many sit in the van. */
    @Test
    void a_task_that_needs_two_takes_two_for_the_whole_visit() {
        String year = """
                {"visits": 1, "term": {"from": "2027-04-01"}, "hour": "57", "setUpMinutes": 15, "trip": "21.00", "overheadPercent": "0",
                 "equipment": [{"kind": "gas-furnace"}], "needTwo": [%s]}""";
        JsonNode alone = Asked.answer("plancost", year.formatted(""));
        String task = Catalogue.shipped().tasksFor("gas-furnace", Map.of()).stream()
                .filter(one -> one.who() == Who.TECHNICIAN)
                .findFirst()
                .orElseThrow()
                .code();
        JsonNode two = Asked.answer("plancost", year.formatted("\"" + task + "\""));
        for (String figure : List.of("/visits/0", "/minutes/tasks", "/minutes/setUp")) {
            assertEquals(2 * alone.at(figure).asInt(), two.at(figure).asInt(), figure);
        }
        assertEquals("21.00", alone.at("/causes/travel").asText());
        assertEquals("21.00", two.at("/causes/travel").asText());
    }
}
