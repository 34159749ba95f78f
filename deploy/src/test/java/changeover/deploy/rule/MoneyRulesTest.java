package changeover.deploy.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Figures published by others, asked from the command line. */
class MoneyRulesTest {

    /** IFRS 15, Illustrative Examples 33 and 34 (Case A). */
    @Test
    void a_price_is_shared_by_what_each_promise_costs_alone() {
        shares(
                "{\"price\":\"100.00\",\"promises\":[{\"alone\":\"50\"},{\"alone\":\"25\"},{\"alone\":\"75\"}]}",
                "33.33",
                "16.67",
                "50.00");
        shares(
                "{\"price\":100.00,\"promises\":[{\"alone\":50},{\"alone\":25},{\"alone\":75}]}",
                "33.33",
                "16.67",
                "50.00");
        shares("""
                {"price": "100", "promises": [{"name": "a", "alone": "40"}, {"name": "b", "alone": "55"},
                 {"name": "c", "alone": "45"}], "soldTogether": [{"names": ["b", "c"], "price": "60"}]}""", "40.00", "33.00", "27.00");
    }

    private static void shares(String input, String... expected) {
        JsonNode answer = Asked.answer("recognition", input);
        List<String> amounts = new ArrayList<>();
        answer.get("shares").forEach(share -> amounts.add(share.get("amount").asText()));
        assertEquals(List.of(expected), amounts);
        assertEquals("100.00", answer.get("sum").asText());
    }

    @Test
    void what_is_earned_depends_on_the_day() {
        JsonNode on = Asked.answer("recognition", """
                        {"price": "249.00", "term": {"from": "2026-04-01", "months": 12}, "on": ["2026-08-15"],
                         "promises": [{"alone": "249.00", "earned": "by-day"}]}""").get("on").get(0);
        assertEquals("92.78", on.get("earned").asText());
        assertEquals("156.22", on.get("owed").asText());
    }

    /** 249.00 for a year in Quebec, cancelled after 136 days with the spring visit done. */
    @Test
    void a_refund_is_reckoned_both_ways_with_its_credit_note() {
        JsonNode answer = Asked.answer("refund", new RefundRule().example());
        assertEquals("156.22", answer.get("refund").asText());
        assertEquals("pro-rata", answer.get("way").asText());
        assertEquals("156.22", answer.at("/ways/pro-rata/refund").asText());
        assertEquals("146.47", answer.at("/ways/work-done/refund").asText());
        assertEquals("179.62", answer.at("/creditNote/total").asText());
        assertEquals("7.81", answer.at("/creditNote/taxes/0/amount").asText());
        assertEquals("15.59", answer.at("/creditNote/taxes/1/amount").asText());
        assertEquals("qc-ccq-2129", answer.at("/policy/rule").asText());
    }

    /** Revenu Québec, "Calculating the Taxes"; Nova Scotia's rate fell from 15 to 14 on 1 April 2025. */
    @Test
    void a_tax_follows_the_place_and_the_day() {
        tax("CA-QC", "2026-03-31", "140.00", "7.00", "13.97");
        tax("CA-QC", "2026-03-31", "100.00", "5.00", "9.98");
        tax("CA-QC", "2026-03-31", "249.00", "12.45", "24.84");
        tax("CA-NS", "2025-03-31", "249.00", "37.35");
        tax("CA-NS", "2025-04-01", "249.00", "34.86");
        tax("CA-YT", "2026-03-31", "249.00", "12.45");
        Asked.refusedInASentence("tax", taxed("US-CA", "2026-03-31", "249.00"));
        Asked.refusedInASentence("tax", taxed("nowhere", "2026-03-31", "249.00"));
        Asked.refusedInASentence("tax", taxed("CA-QC", "2026-03-31", "249.001"));
        Asked.refusedInASentence("tax", taxed("CA-QC", "soon", "249.00"));
        Asked.refusedInASentence("tax", "{\"region\": \"CA-QC\", \"day\": \"2026-03-31\", \"amount\": \"249.00\"}");
        Asked.refusedInASentence("tax", "{\"region\": \"CA-QC\", \"day\": \"2026-03-31\", \"lines\": []}");
    }

    /** Ontario's rate stands in our table from memory, and the answer says so; Quebec's was read. */
    @Test
    void a_rate_from_memory_is_said_to_be() {
        assertEquals(
                false,
                Asked.answer("tax", taxed("CA-ON", "2026-03-31", "249.00"))
                        .at("/taxes/0/read")
                        .asBoolean(true));
        assertEquals(
                true,
                Asked.answer("tax", taxed("CA-QC", "2026-03-31", "249.00"))
                        .at("/taxes/0/read")
                        .asBoolean(false));
    }

    /** 34 TAC 3.357(b)(9): 4 % of a price for taxable work taxes nothing, 6 % all of it unless papers show the split. */
    @Test
    void one_price_for_two_kinds_of_work() {
        mixed("4.00", false, "0.00");
        mixed("6.00", false, "8.25");
        mixed("6.00", true, "0.00", "0.50");
    }

    private static void mixed(String part, boolean documented, String... expected) {
        List<String> amounts = new ArrayList<>();
        Asked.answer(
                        "tax",
                        "{\"region\":\"US-TX\",\"property\":\"commercial\",\"currency\":\"USD\",\"day\":\"2026-03-31\",\"lines\":["
                                + "{\"amount\":\"100.00\",\"mixed\":{\"work\":\"repair\",\"amount\":\"" + part
                                + "\",\"documented\":" + documented + "}}]}")
                .get("taxes")
                .forEach(tax -> amounts.add(tax.get("amount").asText()));
        assertEquals(List.of(expected), amounts);
    }

    private static void tax(String region, String day, String amount, String... expected) {
        List<String> amounts = new ArrayList<>();
        Asked.answer("tax", taxed(region, day, amount))
                .get("taxes")
                .forEach(tax -> amounts.add(tax.get("amount").asText()));
        assertEquals(List.of(expected), amounts);
    }

    private static String taxed(String region, String day, String amount) {
        return "{\"region\":\"" + region + "\",\"day\":\"" + day + "\",\"lines\":[{\"amount\":\"" + amount + "\"}]}";
    }

    @Test
    void wrong_input_is_answered_in_one_sentence() {
        Asked.refused("recognition", "{\"price\":\"10\"}", "A plan without a promise earns nothing.");
        Asked.refused(
                "recognition",
                "{\"price\":\"10\",\"promises\":[{\"alone\":\"0\"}]}",
                "At least one promise must cost something alone.");
        Asked.refused(
                "recognition",
                "{\"price\":\"0.001\",\"promises\":[{\"alone\":\"1\"}]}",
                "price must be an amount with at most 2 decimals, not 0.001.");
        String term = "\"term\":{\"from\":\"2026-04-01\"}";
        for (String wrong : new String[] {
            "{\"price\":\"10\",\"promises\":7}",
            "{\"price\":\"1e99\",\"promises\":[{\"alone\":\"1\"}]}",
            "{\"price\":\"10\",\"promises\":[{\"alone\":\"1\"}],\"on\":[\"2026-04-01\"]}",
            "{\"price\":\"10\",\"promises\":[{\"alone\":\"1\",\"earned\":\"soon\"}]}"
        }) {
            Asked.refusedInASentence("recognition", wrong);
        }
        for (String wrong : new String[] {
            "{\"region\":\"CA-QC\",\"price\":\"10\",\"cancelled\":\"2026-05-01\"}",
            "{\"region\":\"US-CA\",\"price\":\"10\",\"cancelled\":\"2026-05-01\"," + term + "}",
            "{\"region\":\"CA-QC\",\"price\":\"10\",\"billed\":\"11\",\"cancelled\":\"2026-05-01\"," + term + "}",
            "{\"region\":\"CA-QC\",\"price\":\"10\",\"paid\":\"-1\",\"cancelled\":\"2026-05-01\"," + term + "}",
            "{\"region\":\"CA-QC\",\"price\":\"10\",\"cancelled\":\"mayday\"," + term + "}"
        }) {
            Asked.refusedInASentence("refund", wrong);
        }
    }

    @Test
    void a_visit_is_charged_by_the_businesss_own_rules() {
        charges("""
                {"day": "2027-04-12", "kind": "call", "people": 2, "extraMinutes": 60, "currency": "CAD",
                 "prices": [{"kind": "labour", "code": "hour", "price": "120.00", "from": "2027-01-01"}]}""", "hour 240.00");
        Asked.refusedInASentence("charges", """
                {"day": "2027-04-12", "kind": "call", "people": 3, "extraMinutes": 60, "currency": "CAD"}""");
        charges("""
                {"day": "2027-04-12", "kind": "plan", "promisedMinutes": 60, "extraMinutes": 40, "currency": "CAD",
                 "coverage": {"plan": "Comfort", "minutes": 30, "discountPercent": "10"},
                 "prices": [{"kind": "labour", "code": "hour", "price": "120.00", "from": "2027-01-01"}]}""", "promised 0.00", "hour 0.00", "hour 27.00");
        charges("""
                {"day": "2027-04-12", "kind": "call", "extraMinutes": 20, "currency": "CAD",
                 "parts": [{"code": "f", "kind": "filter", "quantity": "2"}],
                 "prices": [{"kind": "labour", "code": "hour", "price": "120.00", "from": "2027-01-01"},
                            {"kind": "part", "code": "f", "cost": "4.25", "from": "2027-01-01"},
                            {"kind": "travel", "code": "river", "price": "80.00", "from": "2027-01-01"}],
                 "markUps": [{"scope": "kind", "item": "filter", "percent": "110", "step": "0.05"}],
                 "labour": {"stepMinutes": 30, "minimumMinutes": 45}, "postal": "X0X 1A2",
                 "zones": [{"code": "river", "postals": ["X0X"]}]}""", "hour 120.00", "f 17.90", "river 80.00");
        charges("""
                {"day": "2027-04-12", "kind": "call", "noAccess": true, "currency": "CAD",
                 "prices": [{"kind": "travel", "code": "no-access", "price": "60.00", "from": "2027-01-01"}]}""", "no-access 60.00");
    }

    private static void charges(String input, String... expected) {
        List<String> lines = new ArrayList<>();
        Asked.answer("charges", input)
                .get("lines")
                .forEach(line -> lines.add(
                        line.get("item").asText() + " " + line.get("net").asText()));
        assertEquals(List.of(expected), lines);
    }
}
