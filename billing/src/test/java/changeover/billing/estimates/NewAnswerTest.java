package changeover.billing.estimates;

import static org.junit.jupiter.api.Assertions.assertEquals;

import changeover.contracts.money.Money;
import changeover.contracts.words.Refusal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** When an estimate may be answered, and where it stands on a day. */
class NewAnswerTest {

    private static final ZoneId ZONE = ZoneId.of("America/Toronto");
    private static final LocalDate OFFERED = LocalDate.of(2026, 11, 2);
    private static final LocalDate LAST = LocalDate.of(2026, 11, 30);
    private static final Instant NOW = at("2026-12-15");

    @Test
    void a_yes_comes_within_the_days_of_the_offer() {
        check(true, "2026-11-02", "may");
        check(true, "2026-11-30", "may");
        check(true, "2026-11-01", "estimate.answer-before-offer");
        check(true, "2026-12-01", "estimate.expired");
        check(true, "2026-12-16", "estimate.answer-ahead");
    }

    @Test
    void a_no_may_come_late() {
        check(false, "2026-12-01", "may");
        check(false, "2026-11-01", "estimate.answer-before-offer");
    }

    @Test
    void only_what_was_offered_is_answered_and_only_once_by_somebody_with_a_name() {
        assertEquals("estimate.not-offered", said(true, "2026-11-03", "Ida Roe", estimate(false, null)));
        assertEquals(
                "constraint.an_estimate_is_answered_once",
                said(true, "2026-11-03", "Ida Roe", estimate(true, "refused")));
        assertEquals("text.missing", said(true, "2026-11-03", " ", estimate(true, null)));
    }

    @Test
    void where_it_stands_follows_from_the_day() {
        assertEquals(EstimateState.DRAFT, estimate(false, null).state(LAST.plusDays(1)));
        assertEquals(EstimateState.OFFERED, estimate(true, null).state(LAST));
        assertEquals(EstimateState.EXPIRED, estimate(true, null).state(LAST.plusDays(1)));
        assertEquals(EstimateState.ACCEPTED, estimate(true, "accepted").state(LAST.plusDays(1)));
        assertEquals(EstimateState.REFUSED, estimate(true, "refused").state(LAST));
        assertEquals(EstimateState.WITHDRAWN, estimate(false, "withdrawn").state(LAST));
        assertEquals(false, estimate(true, null).expiresSoon(LAST.minusDays(8)));
        assertEquals(true, estimate(true, null).expiresSoon(LAST.minusDays(7)));
        assertEquals(true, estimate(true, null).expiresSoon(LAST));
        assertEquals(false, estimate(true, null).expiresSoon(LAST.plusDays(1)));
        assertEquals(false, estimate(true, "accepted").expiresSoon(LAST));
    }

    private static void check(boolean yes, String day, String expected) {
        assertEquals(expected, said(yes, day, "Ida Roe", estimate(true, null)));
    }

    private static String said(boolean yes, String day, String name, Estimate estimate) {
        return new NewAnswer(yes, name, at(day), ConsentChannel.CALL, null)
                .refusal(estimate, ZONE, NOW, List.of())
                .map(Refusal::code)
                .orElse("may");
    }

    private static Instant at(String day) {
        return LocalDate.parse(day).atTime(12, 0).atZone(ZONE).toInstant();
    }

    private static Estimate estimate(boolean offered, @Nullable String answer) {
        Money money = Money.of("100.00", "CAD");
        return new Estimate(
                new UUID(0, 1),
                0,
                new UUID(0, 2),
                "1, rue du Quai",
                "CA-QC",
                new UUID(0, 3),
                "Ida Roe",
                "fr",
                new Estimate.Origin(null, null, null, false),
                "Remplacer le capteur",
                60,
                true,
                LAST,
                null,
                Currency.getInstance("CAD"),
                OFFERED,
                offered ? new Estimate.Offer("E-2026-0001", OFFERED, money, money, money.plus(money)) : null,
                answer == null ? null : new Estimate.Answer(answer, "Ida Roe", at("2026-11-05"), null, null),
                null,
                List.of());
    }
}
