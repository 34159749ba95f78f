package changeover.deploy.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

class IntervalRuleTest {

    /** NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.1.3. */
    @Test
    void published_figures_come_out_as_published() {
        JsonNode answer = Asked.answer("interval", """
                {"unit": "hours", "prior": "flat", "seen": [{"greyAt": 54}, {"greyAt": 187}, {"greyAt": 216},
                 {"greyAt": 240}, {"greyAt": 244}, {"greyAt": 335}, {"greyAt": 361}, {"greyAt": 373}, {"greyAt": 375},
                 {"greyAt": 386}, {"cleanAt": 500, "times": 10}]}""");
        assertEquals("1.7208", answer.get("shape").asText());
        assertEquals("606.528", answer.get("scale").asText());
        assertEquals("540.737", answer.get("mean").asText());
        assertEquals("hours", answer.get("unit").asText());
        assertEquals("month", answer.get("checkHeldBy").asText());
    }

    @Test
    void the_same_times_in_another_unit_give_the_same_advice() {
        String weeks = "{\"unit\":\"weeks\",\"thicknessInches\":1,\"seen\":[{\"greyAt\":9},{\"greyAt\":10}]}";
        String days = "{\"unit\":\"days\",\"thicknessInches\":1,\"seen\":[{\"greyAt\":63},{\"greyAt\":70}]}";
        JsonNode one = Asked.answer("interval", weeks);
        JsonNode other = Asked.answer("interval", days);
        assertEquals(one.get("sentence"), other.get("sentence"));
        assertEquals(49, one.get("checkAfterDays").asInt());
        assertEquals(56, other.get("changeAfterDays").asInt());
        assertEquals(other.get("scale").asDouble(), one.get("scale").asDouble() * 7, 0.01);
        assertEquals(
                "Changed grey at 9 and 10\u00a0weeks: check at 7, change at 8 at the latest.",
                one.get("sentence").get("en").asText());
        assertTrue(one.get("curve").size() > 20);
    }

    @Test
    void the_label_of_the_unit_goes_before_its_thickness() {
        String clean = "\"seen\":[{\"cleanAt\":11,\"times\":9}]}";
        assertEquals(91, longest("{\"unit\":\"months\",\"thicknessInches\":1," + clean));
        assertEquals(182, longest("{\"unit\":\"months\"," + clean));
        assertEquals(365, longest("{\"unit\":\"months\",\"thicknessInches\":1,\"labelMonths\":12," + clean));
    }

    private static int longest(String input) {
        return Asked.answer("interval", input).get("longestDays").asInt();
    }

    @Test
    void one_change_recorded_by_household_and_technician_counts_once() {
        JsonNode answer = Asked.answer("interval", """
                {"thicknessInches": 1, "log": [
                 {"day": "2027-01-04", "by": "technician", "changed": true},
                 {"day": "2027-03-08", "by": "technician", "filter": "grey", "changed": true},
                 {"day": "2027-03-10", "by": "household", "changed": true},
                 {"day": "2027-04-10", "by": "household", "filter": "clean"}]}""");
        assertEquals(2, answer.get("seen").size());
        assertEquals(63, answer.get("seen").get(0).get("greyAt").asInt());
        assertEquals(33, answer.get("seen").get(1).get("cleanAt").asInt());
        assertEquals(1, answer.get("seen").get(1).get("times").asInt());
        Asked.refused(
                "interval",
                "{\"log\":[{\"day\":\"2027-03-01\",\"by\":\"cat\",\"filter\":\"grey\"}]}",
                "by must be household or technician, not cat.");
        Asked.refused(
                "interval",
                "{\"log\":[{\"day\":\"2027-03-01\",\"by\":\"household\"}]}",
                "Each record in log needs filter, changed or both.");
    }

    @Test
    void wrong_input_is_answered_in_one_sentence() {
        Asked.refused(
                "interval", "{\"unit\":\"fortnights\"}", "unit must be hours, days, weeks or months, not fortnights.");
        Asked.refused("interval", "{\"prior\":\"flat\"}", "With a flat prior at least one thing must have been seen.");
        Asked.refused(
                "interval",
                "{\"seen\":[{\"cleanAt\":30,\"greyAt\":20}]}",
                "A filter must be seen clean before it is seen grey, not after.");
        Asked.refused("interval", "{\"seen\":[{}]}", "Each thing seen needs greyAt, cleanAt or both.");
        Asked.refused("interval", "{\"seen\":[9, 10]}", "seen must be a list of objects.");
        for (String wrong : new String[] {
            "{\"seen\":[{\"greyAt\":-1}]}",
            "{\"seen\":[{\"greyAt\":0}]}",
            "{\"seen\":[{\"greyAt\":\"soon\"}]}",
            "{\"seen\":[{\"greyAt\":1e300}]}",
            "{\"seen\":[{\"greyAt\":9,\"times\":2000000000}]}",
            "{\"prior\":\"strong\"}",
            "{\"prior\":{\"scale\":0,\"scaleFactor\":2,\"shape\":3,\"shapeFactor\":2}}",
            "{\"prior\":{\"scale\":9}}",
            "{\"acceptedChance\":0}",
            "{\"acceptedChance\":1}",
            "{\"labelMonths\":0}",
            "{\"labelMonths\":1.5}",
            "{\"thicknessInches\":-1}"
        }) {
            Asked.refusedInASentence("interval", wrong);
        }
    }
}
