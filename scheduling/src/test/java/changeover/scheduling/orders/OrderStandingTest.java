package changeover.scheduling.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.scheduling.orders.OrderFacts.Second;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** How an order stands, and what comes next. Three were ordered, expected on the tenth. */
class OrderStandingTest {

    private static final LocalDate TENTH = LocalDate.of(2026, 12, 10);

    private static OrderFacts facts(int arrived, int returned, boolean givenUp, boolean told, Second second) {
        return new OrderFacts(
                BigDecimal.valueOf(3),
                BigDecimal.valueOf(arrived),
                BigDecimal.valueOf(returned),
                TENTH,
                givenUp,
                told,
                second);
    }

    private static void check(OrderFacts facts, LocalDate today, OrderStanding standing, NextStep next) {
        assertEquals(standing, OrderStanding.of(facts, today), facts.toString());
        assertEquals(next, NextStep.of(facts, today), facts.toString());
    }

    @Test
    void it_is_late_from_the_day_after_it_was_expected() {
        OrderFacts nothing = facts(0, 0, false, false, Second.NONE);
        check(nothing, TENTH.minusDays(1), OrderStanding.COMING, NextStep.WAIT);
        check(nothing, TENTH, OrderStanding.COMING, NextStep.WAIT);
        check(nothing, TENTH.plusDays(1), OrderStanding.LATE, NextStep.ASK);
        check(facts(2, 0, false, true, Second.HAS_A_DAY), TENTH.plusDays(1), OrderStanding.LATE, NextStep.ASK);
        check(facts(2, 2, false, false, Second.NONE), TENTH, OrderStanding.COMING, NextStep.WAIT);
    }

    @Test
    void what_is_here_is_told_then_given_its_visit_then_its_day() {
        LocalDate late = TENTH.plusDays(5);
        check(facts(3, 0, false, false, Second.NONE), late, OrderStanding.HERE, NextStep.TELL);
        check(facts(3, 0, false, true, Second.NONE), late, OrderStanding.HERE, NextStep.MAKE_VISIT);
        check(facts(3, 0, false, false, Second.WITHOUT_DAY), late, OrderStanding.PLANNED, NextStep.TELL);
        check(facts(3, 0, false, true, Second.WITHOUT_DAY), late, OrderStanding.PLANNED, NextStep.GIVE_DAY);
        check(facts(3, 0, false, true, Second.HAS_A_DAY), late, OrderStanding.PLANNED, NextStep.GO);
        check(facts(3, 0, false, false, Second.KEPT), late, OrderStanding.USED, NextStep.NOTHING);
    }

    @Test
    void what_will_not_come_is_awaited_no_more() {
        LocalDate late = TENTH.plusDays(5);
        check(facts(0, 0, true, false, Second.NONE), late, OrderStanding.GIVEN_UP, NextStep.NOTHING);
        check(facts(1, 0, true, true, Second.NONE), late, OrderStanding.HERE, NextStep.MAKE_VISIT);
        check(facts(1, 1, true, false, Second.NONE), late, OrderStanding.GONE_BACK, NextStep.NOTHING);
        check(facts(3, 3, false, true, Second.HAS_A_DAY), late, OrderStanding.GONE_BACK, NextStep.NOTHING);
        check(facts(3, 2, false, true, Second.NONE), late, OrderStanding.HERE, NextStep.MAKE_VISIT);
    }
}
