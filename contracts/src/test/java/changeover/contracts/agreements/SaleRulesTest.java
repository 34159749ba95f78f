package changeover.contracts.agreements;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import changeover.contracts.calendar.Term;
import changeover.contracts.money.Money;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class SaleRulesTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @Test
    void quebecRefusesASaleAwayFromTheCounterSince7November2024() {
        refused("CA-QC", SaleChannel.HOME, TODAY, true);
        refused("CA-QC", SaleChannel.ELSEWHERE, TODAY, true);
        refused("CA-QC", SaleChannel.COUNTER, TODAY, false);
        refused("CA-QC", SaleChannel.DISTANCE, TODAY, false);
        refused("CA-QC", SaleChannel.HOME, LocalDate.of(2024, 11, 7), true);
        refused("CA-QC", SaleChannel.HOME, LocalDate.of(2024, 11, 6), false);
        refused("CA-ON", SaleChannel.HOME, TODAY, false);
        refused("US-NY", SaleChannel.HOME, TODAY, false);
        assertEquals(
                "channel",
                SaleRules.refusal("CA-QC", SaleChannel.HOME, TODAY)
                        .orElseThrow()
                        .field());
    }

    @Test
    void ontarioReminds() {
        assertEquals(1, SaleRules.notes("CA-ON", SaleChannel.HOME, TODAY).size());
        assertTrue(SaleRules.notes("CA-ON", SaleChannel.COUNTER, TODAY).isEmpty());
        assertTrue(SaleRules.notes("CA-QC", SaleChannel.HOME, TODAY).isEmpty());
    }

    @Test
    void instalmentsSumToThePriceTheOddCentsOnTheFirst() {
        instalments("249.00", 1, "2026-04-01", "2026-04-01 249.00");
        instalments("250.00", 3, "2026-04-01", "2026-04-01 83.34", "2026-08-01 83.33", "2026-12-01 83.33");
        instalments(
                "100.01",
                4,
                "2027-01-31",
                "2027-01-31 25.01",
                "2027-04-30 25.00",
                "2027-07-31 25.00",
                "2027-10-31 25.00");
        assertThrows(
                IllegalArgumentException.class, () -> Instalments.of(Money.of("1", "CAD"), 13, Term.ofYear(TODAY)));
    }

    @Test
    void theFirstInvoiceWaitsForTheFirstVisitInAQuebecDistanceSaleWithoutACard() {
        issue("CA-QC", SaleChannel.DISTANCE, false, "2026-11-25", "2026-11-25", true);
        issue("CA-QC", SaleChannel.DISTANCE, true, "2026-11-25", "2026-11-25", false);
        issue("CA-QC", SaleChannel.COUNTER, false, "2026-11-25", "2026-11-25", false);
        issue("CA-ON", SaleChannel.DISTANCE, false, "2026-11-25", "2026-11-25", false);
        issue("CA-ON", SaleChannel.DISTANCE, false, "2027-03-01", "2027-03-01", false);
        issue("CA-ON", SaleChannel.COUNTER, false, "2026-11-01", "2026-11-25", false);
        issue("CA-QC", SaleChannel.DISTANCE, false, "2027-03-01", "2027-03-01", true);
    }

    private static void refused(String place, SaleChannel channel, LocalDate day, boolean expected) {
        assertEquals(expected, SaleRules.refusal(place, channel, day).isPresent(), place + channel + day);
    }

    private static void instalments(String price, int count, String from, String... expected) {
        List<Instalments.Instalment> all = Instalments.of(
                        Money.of(price, "CAD"), count, Term.ofYear(LocalDate.parse(from)))
                .all();
        assertEquals(
                List.of(expected),
                all.stream()
                        .map(one -> one.day() + " " + one.amount().decimal())
                        .toList());
    }

    private static void issue(
            String place, SaleChannel channel, boolean card, String instalment, String notBefore, boolean awaits) {
        assertEquals(
                new FirstIssueDay(LocalDate.parse(notBefore), awaits),
                FirstIssueDay.of(place, channel, card, TODAY, LocalDate.parse(instalment)));
    }
}
