package changeover.scheduling.stopped;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import changeover.contracts.words.Refusal;
import changeover.scheduling.stopped.HeatAnswer.Called;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Which ticket restores, what has to be done where, and what a frozen night asks. */
class StopRulesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 1, 14);

    private static void ticket(String expected, String said, String sentence, String kind) {
        assertEquals(expected, RestoringTicket.of(said, sentence, kind));
    }

    @Test
    void what_was_said_comes_first_then_what_was_seen_then_the_kind() {
        ticket("refrigerant", "refrigerant", "co-high", "gas-furnace");
        ticket("gas", null, "co-high", "air-handler");
        ticket("electrical", null, "heat-mark", "rooftop-unit");
        ticket("gas", null, null, "gas-furnace");
        ticket("electrical", null, null, "air-handler");
        ticket("electrical", null, null, null);
        ticket("electrical", "plumbing", "own-words", null);
    }

    private static void duties(String expected, String place, String ticket, LocalDate day) {
        assertEquals(
                expected,
                StopDuty.of(place, ticket, day).stream()
                        .map(duty -> duty.code() + "/" + duty.place() + "/" + duty.days())
                        .collect(Collectors.joining(" ")));
    }

    @Test
    void a_places_own_row_stands_instead_of_the_one_that_holds_everywhere() {
        duties("shut-off/*/0 tag/*/0 household-told/*/0", "CA-QC", "gas", DAY);
        duties("shut-off/*/0 tag/*/0 household-told/*/0", "CA-ON", "electrical", DAY);
        duties(
                "shut-off/CA-ON/0 tag/CA-ON/0 household-told/*/0 distributor-told/CA-ON/0 user-notice/CA-ON/0"
                        + " distributor-notice/CA-ON/14",
                "CA-ON",
                "gas",
                DAY);
        duties("shut-off/*/0 tag/*/0 household-told/*/0", "CA-ON", "gas", LocalDate.of(2001, 6, 26));
        assertEquals(
                LocalDate.of(2026, 1, 28),
                StopDuty.of("CA-ON", "gas", DAY).getLast().dueOn(DAY));
        assertFalse(
                StopDuty.of("CA-ON", "gas", DAY).stream().anyMatch(StopDuty::read), "none was read at its source yet");
    }

    @Test
    void what_was_done_for_a_ticket_that_was_corrected_away_stays_done() {
        done("shut-off tag household-told", "electrical");
        done("shut-off tag household-told user-notice", "electrical", "gas", "refrigerant");
        done("shut-off tag household-told user-notice", "gas", "electrical");
        done("shut-off tag household-told user-notice", "gas", "electrical", "refrigerant", "electrical");
        done("shut-off tag household-told distributor-told user-notice distributor-notice", "electrical", "gas");
    }

    /** @param tickets the first one and the corrections; the notice to the user was given */
    private static void done(String expected, String... tickets) {
        assertEquals(
                expected,
                stopped(List.of(tickets)).duties().stream()
                        .map(owed -> owed.duty().code())
                        .collect(Collectors.joining(" ")));
    }

    private static MachineStop stopped(List<String> tickets) {
        return new MachineStop(
                new UUID(1, 1),
                new UUID(1, 2),
                "12 Larch Street",
                null,
                null,
                null,
                null,
                "Mara Quill",
                Instant.EPOCH,
                DAY,
                null,
                null,
                null,
                null,
                tickets.getLast(),
                tickets.getFirst(),
                "CA-ON",
                null,
                null,
                tickets.stream()
                        .skip(1)
                        .map(ticket -> new MachineStop.Correction(ticket, "seen again", "Mara Quill", Instant.EPOCH))
                        .toList(),
                List.of(),
                List.of(new MachineStop.Done("user-notice", "Mara Quill", DAY, null)));
    }

    private static void heat(String expected, boolean only, boolean freezing, String tonight, boolean called) {
        Called somebody = called ? new Called("Mara Quill", Instant.EPOCH) : null;
        assertEquals(
                expected,
                new HeatAnswer(only, freezing, tonight, somebody, somebody)
                        .refusals().stream().map(Refusal::field).collect(Collectors.joining(" ")));
    }

    @Test
    void only_the_only_heat_in_frost_asks_for_the_night() {
        heat("", false, true, null, false);
        heat("", true, false, null, false);
        heat("tonight officeWho customerWho", true, true, null, false);
        heat("tonight", true, true, " ", true);
        heat("officeWho customerWho", true, true, "Two electric heaters", false);
        heat("", true, true, "Two electric heaters", true);
    }

    @Test
    void an_hour_that_is_still_to_come_was_yesterdays() {
        var zone = ZoneId.of("America/Toronto");
        var now = LocalDateTime.of(2026, 1, 14, 0, 10);
        assertEquals(
                Instant.parse("2026-01-14T04:50:00Z"),
                Called.of("Mara Quill", LocalTime.of(23, 50), now, zone).at());
        assertEquals(
                Instant.parse("2026-01-14T05:05:00Z"),
                Called.of("Mara Quill", LocalTime.of(0, 5), now, zone).at());
    }

    @Test
    void every_duty_says_its_source_in_both_languages() {
        for (String ticket : List.of("gas", "electrical", "refrigerant")) {
            for (StopDuty duty : StopDuty.of("CA-ON", ticket, DAY)) {
                assertFalse(duty.source().en().isBlank() || duty.wording().en().isBlank());
                assertFalse(duty.source().fr().equals(duty.source().en()));
                assertFalse(duty.wording().fr().equals(duty.wording().en()));
            }
        }
    }
}
