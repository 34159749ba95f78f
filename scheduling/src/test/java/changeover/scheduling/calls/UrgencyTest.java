package changeover.scheduling.calls;

import static changeover.scheduling.calls.Heat.NO;
import static changeover.scheduling.calls.Heat.UNKNOWN;
import static changeover.scheduling.calls.Heat.YES;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class UrgencyTest {

    private static final Instant RING = Instant.parse("2027-01-11T11:40:00Z");

    private static void check(Urgency expected, Trouble trouble, Heat heat, Risk... risks) {
        assertEquals(expected, Urgency.of(trouble, heat, Set.of(risks)), trouble + " " + heat + " " + List.of(risks));
    }

    @Test
    void life_comes_before_everything() {
        for (Trouble trouble : Trouble.values()) {
            check(Urgency.LIFE, trouble, YES, Risk.ALARM);
            check(Urgency.LIFE, trouble, YES, Risk.GAS, Risk.AGE);
            check(Urgency.LIFE, trouble, NO, Risk.SYMPTOMS);
        }
        check(Urgency.LIFE, Trouble.ALARM, YES);
    }

    @Test
    void water_a_smell_and_no_heat_where_somebody_is_frail_are_urgent() {
        check(Urgency.URGENT, Trouble.NO_COOLING, YES, Risk.WATER);
        check(Urgency.URGENT, Trouble.SMELL, YES);
        check(Urgency.URGENT, Trouble.NO_HEAT, NO, Risk.INFANT);
        check(Urgency.URGENT, Trouble.NO_HEAT, UNKNOWN, Risk.AGE);
        check(Urgency.URGENT, Trouble.THERMOSTAT, NO, Risk.AGE);
    }

    @Test
    void cold_frail_or_wet_is_soon_and_the_rest_is_ordinary() {
        check(Urgency.SOON, Trouble.NO_HEAT, NO);
        check(Urgency.SOON, Trouble.NO_HEAT, UNKNOWN);
        check(Urgency.SOON, Trouble.THERMOSTAT, NO);
        check(Urgency.SOON, Trouble.NO_COOLING, YES, Risk.INFANT);
        check(Urgency.SOON, Trouble.WATER, YES);
        check(Urgency.ORDINARY, Trouble.NO_HEAT, YES);
        check(Urgency.ORDINARY, Trouble.NO_COOLING, UNKNOWN);
        check(Urgency.ORDINARY, Trouble.NOISE, YES);
    }

    @Test
    void a_plan_is_answered_sooner_and_the_business_may_say_otherwise() {
        var usual = new AnswerHours(Map.of());
        for (Urgency urgency : Urgency.values()) {
            assertTrue(usual.of(urgency, true) < usual.of(urgency, false), urgency.code());
        }
        var own = new AnswerHours(Map.of(new AnswerHours.Asked(Urgency.SOON, true), 6));
        assertEquals(RING.plus(Duration.ofHours(6)), own.promise(RING, Urgency.SOON, true));
        assertEquals(RING.plus(Duration.ofHours(48)), own.promise(RING, Urgency.SOON, false));
    }

    @Test
    void what_waits_is_ordered_by_risk_then_promise_and_what_has_a_visit_comes_after() {
        var inOrder = List.of(
                waits(false, Urgency.LIFE, 9, 0),
                waits(false, Urgency.URGENT, 1, 5),
                waits(false, Urgency.URGENT, 2, 1),
                waits(false, Urgency.URGENT, 2, 3),
                waits(false, Urgency.ORDINARY, 0, 0),
                waits(true, Urgency.LIFE, 0, 0),
                waits(true, Urgency.SOON, 0, 0));
        var mixed = new ArrayList<>(inOrder);
        Collections.reverse(mixed);
        mixed.sort(WaitingCall.ORDER);
        assertEquals(inOrder, mixed);
        WaitingCall one = inOrder.getFirst();
        assertFalse(one.isLate(one.promisedBy()));
        assertTrue(one.isLate(one.promisedBy().plusSeconds(1)));
    }

    private static WaitingCall waits(boolean answered, Urgency urgency, int promisedHour, int rangHour) {
        return new WaitingCall(
                answered, urgency, RING.plus(Duration.ofHours(promisedHour)), RING.plus(Duration.ofHours(rangHour)));
    }

    @Test
    void whoever_goes_there_reads_what_was_said_in_their_language() {
        var facts = new Call.Facts(
                new java.util.UUID(1, 1),
                "Mara Quill",
                "555-0142",
                RING,
                Trouble.NO_HEAT,
                "The furnace clicks and stops.",
                NO,
                Set.of(Risk.INFANT),
                false,
                null,
                null,
                null);
        assertEquals(
                "No heat. There is no heat. An infant lives there. The furnace clicks and stops. Rang: Mara Quill, 555-0142.",
                CallInWords.note(facts, java.util.Locale.ENGLISH));
        assertEquals(
                "Pas de chauffage. Il n’y a pas de chauffage. Un nourrisson y habite. The furnace clicks and stops. A appelé\u00a0: Mara Quill, 555-0142.",
                CallInWords.note(facts, java.util.Locale.CANADA_FRENCH));
    }

    @Test
    void the_emergency_number_is_the_countrys_own() {
        assertEquals("911", EmergencyNumber.in("CA").orElseThrow());
        assertEquals("911", EmergencyNumber.in("US").orElseThrow());
        assertEquals("112", EmergencyNumber.in("FR").orElseThrow());
        assertTrue(EmergencyNumber.in("AQ").isEmpty());
    }
}
