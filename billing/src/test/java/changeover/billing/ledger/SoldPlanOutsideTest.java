package changeover.billing.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.billing.ledger.Promised.Earned;
import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import changeover.contracts.words.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/**
 * A plan for 249.00 from 1 April 2026, cancelled on 15 August after 136 of 365 days, its spring visit done: 140, 160 and 40 alone.
 * By days 92.78 is earned and 156.22 goes back; by work 102.53 and 146.47 (IFRS 15, paragraphs 35 and 74, worked by hand).
 */
class SoldPlanOutsideTest {

    private static final Currency CAD = Currency.getInstance("CAD");
    private static final LocalDate FIRST = LocalDate.of(2026, 4, 1);
    private static final LocalDate CANCELLED = LocalDate.of(2026, 8, 15);

    private static final List<Promised> WORK = List.of(
            new Promised("spring", Money.of("140.00", "CAD"), Earned.WHEN_DONE),
            new Promised("autumn", Money.of("160.00", "CAD"), Earned.WHEN_DONE),
            new Promised("filters", Money.of("40.00", "CAD"), Earned.WHEN_DONE));

    private static final List<Promised> DAYS = List.of(new Promised("days", Money.of("60.00", "CAD"), Earned.BY_DAY));

    private static void check(List<Promised> promised, long creditMinor, String earned, String invoiced) {
        List<SoldPlan.Asked> asked = new ArrayList<>();
        asked.add(new SoldPlan.Asked(false, FIRST, null, 24_900));
        if (creditMinor > 0) {
            asked.add(new SoldPlan.Asked(true, CANCELLED, null, creditMinor));
        }
        SoldPlan plan = new SoldPlan(
                new SoldPlan.Head(
                        UUID.randomUUID(),
                        7,
                        UUID.randomUUID(),
                        "14 Larch Street",
                        UUID.randomUUID(),
                        "Ida Roe",
                        new Wording("Comfort", "Confort"),
                        Term.ofYear(FIRST)),
                promised,
                EarnedOn.Basis.PRICES,
                SoldPlan.known(Map.of("spring", LocalDate.of(2026, 5, 12)), promised),
                asked,
                CANCELLED,
                creditMinor > 0
                        ? List.of(new Settlement.Settled(CANCELLED, Money.ofMinor(24_900 - creditMinor, "CAD")))
                        : List.of());
        LocalDate later = CANCELLED.plusDays(30);
        assertEquals(earned, plan.earned(later, CAD).decimal());
        assertEquals(invoiced, plan.invoiced(later, CAD).decimal());
    }

    @Test
    void by_days_and_by_work_before_anything_is_given_back() {
        check(DAYS, 0, "92.78", "249.00");
        check(WORK, 0, "102.53", "249.00");
    }

    @Test
    void what_is_kept_is_earned_once_it_is_settled() {
        check(DAYS, 15_622, "92.78", "92.78");
        check(WORK, 14_647, "102.53", "102.53");
        check(WORK, 15_622, "92.78", "92.78");
    }
}
