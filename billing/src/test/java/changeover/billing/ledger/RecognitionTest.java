package changeover.billing.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.billing.ledger.Promised.Earned;
import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RecognitionTest {

    private static final Currency CAD = Currency.getInstance("CAD");
    private static final Term YEAR = Term.ofYear(LocalDate.of(2026, 4, 1));

    @Test
    void a_visit_is_earned_on_its_day_and_standing_ready_by_the_day() {
        Recognition plan = Recognition.of(
                money("249.00"),
                YEAR,
                List.of(
                        new Promised("spring", money("140.00"), Earned.WHEN_DONE),
                        new Promised("autumn", money("160.00"), Earned.WHEN_DONE),
                        new Promised("ready", money("40.00"), Earned.BY_DAY)),
                List.of());
        Map<String, LocalDate> done = Map.of("spring", LocalDate.of(2026, 5, 12));
        earned(plan, done, "2026-04-01", "0.00");
        earned(plan, done, "2026-05-12", "3.29");
        earned(plan, done, "2026-05-13", "105.90");
        earned(plan, done, "2027-04-01", "131.82");
        earned(plan, done, "2030-01-01", "131.82");
        assertEquals(
                "117.18", plan.owedBefore(LocalDate.of(2030, 1, 1), done).decimal(), "the autumn visit is still owed");
    }

    private static void earned(Recognition plan, Map<String, LocalDate> done, String day, String expected) {
        assertEquals(expected, plan.earnedBefore(LocalDate.parse(day), done).decimal(), day);
    }

    @Test
    void no_cent_is_lost_on_any_day_of_any_plan() {
        long seed = Long.getLong("changeover.seed", System.nanoTime());
        System.out.println("recognition seed=" + seed);
        Random random = new Random(seed);
        int plans = Boolean.getBoolean("changeover.deep") ? 200_000 : 5_000;
        for (int at = 0; at < plans; at++) {
            Recognition plan = plan(random);
            Money nought = Money.zero(CAD);
            List<Money> amounts =
                    plan.shares().stream().map(Recognition.Share::amount).toList();
            assertEquals(plan.price(), Money.sum(amounts, CAD), plan.toString());
            assertTrue(amounts.stream().noneMatch(Money::isNegative), plan.toString());
            plan.shares().stream()
                    .filter(share -> share.promised().alone().isZero())
                    .forEach(share -> assertTrue(share.amount().isZero(), plan.toString()));
            Map<String, LocalDate> done = new HashMap<>();
            plan.shares().stream()
                    .filter(share -> share.promised().earned() == Earned.WHEN_DONE)
                    .forEach(share -> done.put(share.promised().name(), within(plan.term(), random)));
            Money before = nought;
            Money inPeriods = nought;
            for (LocalDate day = plan.term().from(); day.isBefore(plan.term().until()); day = day.plusDays(17)) {
                LocalDate next = day.plusDays(17).isBefore(plan.term().until())
                        ? day.plusDays(17)
                        : plan.term().until();
                Money earned = plan.earnedBefore(day, done);
                assertTrue(earned.compareTo(before) >= 0, "earned falls in " + plan);
                assertEquals(plan.price(), earned.plus(plan.owedBefore(day, done)));
                before = earned;
                inPeriods = inPeriods.plus(plan.earnedIn(day, next, done));
            }
            assertEquals(plan.price(), inPeriods, "the periods of " + plan);
            assertEquals(plan.price(), plan.earnedBefore(plan.term().until(), done), plan.toString());
        }
    }

    static Recognition plan(Random random) {
        List<Promised> promised = new ArrayList<>();
        int promises = 1 + random.nextInt(8);
        for (int number = 0; number < promises; number++) {
            long alone = number == 0 ? 1 + random.nextInt(30_000) : random.nextInt(4) * (long) random.nextInt(20_000);
            promised.add(new Promised(
                    "promise " + number,
                    new Money(alone, CAD),
                    random.nextInt(3) == 0 ? Earned.BY_DAY : Earned.WHEN_DONE));
        }
        java.util.Collections.shuffle(promised, random);
        Money price = new Money(random.nextInt(5) == 0 ? random.nextInt(10) : random.nextInt(100_000), CAD);
        Term term = Term.ofMonths(LocalDate.of(2024, 1, 1).plusDays(random.nextInt(800)), 1 + random.nextInt(24));
        return Recognition.of(price, term, promised, List.of());
    }

    static LocalDate within(Term term, Random random) {
        return term.from().plusDays(random.nextInt((int) term.days()));
    }

    @Test
    void what_cannot_be_shared_is_refused() {
        Promised one = new Promised("one", money("10"), Earned.WHEN_DONE);
        Promised free = new Promised("free", money("0"), Earned.WHEN_DONE);
        refused(() -> Recognition.of(money("10"), YEAR, List.of(), List.of()));
        refused(() -> Recognition.of(money("10"), YEAR, List.of(one, one), List.of()));
        refused(() -> Recognition.of(money("10"), YEAR, List.of(free), List.of()));
        refused(() -> Recognition.of(money("-10"), YEAR, List.of(one), List.of()));
        refused(() -> Recognition.of(
                money("10"), YEAR, List.of(one), List.of(new SoldTogether(List.of("one", "two"), money("5")))));
        refused(() -> new SoldTogether(List.of("one"), money("5")));
        refused(() -> new Promised("", money("5"), Earned.BY_DAY));
        refused(() -> new Promised("one", money("-5"), Earned.BY_DAY));
        refused(() -> Recognition.of(money("10"), YEAR, List.of(one), List.of())
                .earnedBefore(YEAR.until(), Map.of("two", YEAR.from())));
        assertEquals(
                "10.00",
                Recognition.of(money("10"), YEAR, List.of(one, free), List.of())
                        .shares()
                        .getFirst()
                        .amount()
                        .decimal());
        assertTrue(Recognition.of(money("0"), YEAR, List.of(free), List.of())
                .shares()
                .getFirst()
                .amount()
                .isZero());
    }

    private static void refused(org.junit.jupiter.api.function.Executable act) {
        String sentence = assertThrows(IllegalArgumentException.class, act).getMessage();
        assertTrue(sentence.endsWith("."), sentence);
    }

    private static Money money(String amount) {
        return Money.of(amount, "CAD");
    }
}
