package changeover.web.portal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.TemporalAdjusters;
import java.time.zone.ZoneOffsetTransition;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Calendars as another library (biweekly) reads them, and the zone's rules in them beside those of the Java platform (both from the
 * IANA time zone database). Lines of at most 75 octets: RFC 5545, 3.1.
 */
class CalendarFileOutsideTest {

    private static final ZoneId TORONTO = ZoneId.of("America/Toronto");
    private static final Instant TOLD = Instant.parse("2026-11-30T12:00:00Z");
    private static final UUID VISIT = UUID.fromString("00000000-0000-0009-0000-000000000001");

    @Test
    void the_hour_is_right_in_winter_and_in_summer() {
        starts("2027-03-12", "08:00", "2027-03-12T13:00:00Z");
        starts("2027-03-16", "08:00", "2027-03-16T12:00:00Z");
        starts("2027-11-05", "08:00", "2027-11-05T12:00:00Z");
        starts("2027-11-09", "08:00", "2027-11-09T13:00:00Z");
    }

    /** The last two rules in the file against the zone as Java knows it, for twenty years: both days on which clocks change are in. */
    @Test
    void the_zones_rules_in_the_file_change_clocks_when_they_change() {
        LocalDate day = LocalDate.of(2027, 3, 14);
        String text = new String(
                CalendarFile.of("Visits", TORONTO, List.of(entry(0, day, LocalTime.of(8, 0), false))),
                StandardCharsets.UTF_8);
        assertTrue(text.contains("DTSTART;TZID=America/Toronto:20270314T080000\r\n"), text);
        assertTrue(text.contains("DTEND;TZID=America/Toronto:20270314T093000\r\n"), text);
        for (int year = 2026; year < 2046; year++) {
            ZoneOffsetTransition forward = TORONTO.getRules().nextTransition(Instant.parse(year + "-01-01T00:00:00Z"));
            ZoneOffsetTransition back = TORONTO.getRules().nextTransition(forward.getInstant());
            assertEquals(onset(text, "DAYLIGHT", year), forward.getDateTimeBefore());
            assertEquals(onset(text, "STANDARD", year), back.getDateTimeBefore());
        }
        assertTrue(text.contains("TZOFFSETFROM:-0500\r\nTZOFFSETTO:-0400\r\nDTSTART:20070311T020000"), text);
        assertTrue(text.contains("TZOFFSETFROM:-0400\r\nTZOFFSETTO:-0500\r\nDTSTART:20071104T020000"), text);
    }

    /** When the rule that still holds begins in a year: the nth Sunday of its month at its hour. */
    private static LocalDateTime onset(String text, String kind, int year) {
        Matcher rule = Pattern.compile("BEGIN:" + kind + "\r\n(?:(?!END:).*\r\n)*?DTSTART:\\d{8}T(\\d{2})0000\r\n"
                        + "RRULE:FREQ=YEARLY;BYMONTH=(\\d+);BYDAY=(\\d)SU\r\n")
                .matcher(text);
        assertTrue(rule.find(), text);
        return LocalDate.of(year, Integer.parseInt(rule.group(2)), 1)
                .with(TemporalAdjusters.dayOfWeekInMonth(Integer.parseInt(rule.group(3)), DayOfWeek.SUNDAY))
                .atTime(Integer.parseInt(rule.group(1)), 0);
    }

    private static void starts(String day, String hour, String instant) {
        VEvent read = read(entry(0, LocalDate.parse(day), LocalTime.parse(hour), false))
                .getEvents()
                .getFirst();
        assertEquals(Instant.parse(instant), read.getDateStart().getValue().toInstant());
        assertEquals(
                Instant.parse(instant).plusSeconds(5_400),
                read.getDateEnd().getValue().toInstant());
    }

    @Test
    void a_moved_visit_keeps_its_name_and_counts_up_and_one_that_fell_away_says_so() {
        LocalDate day = LocalDate.of(2027, 4, 20);
        ICalendar calendar = read(entry(0, day, LocalTime.of(9, 0), false), entry(3, day, LocalTime.of(9, 0), true));
        assertEquals(ICalVersion.V2_0, calendar.getVersion());
        VEvent first = calendar.getEvents().get(0);
        VEvent second = calendar.getEvents().get(1);
        assertEquals(VISIT.toString(), first.getUid().getValue());
        assertEquals(first.getUid(), second.getUid());
        assertEquals(0, first.getSequence().getValue());
        assertEquals(3, second.getSequence().getValue());
        assertTrue(first.getStatus().isConfirmed());
        assertTrue(second.getStatus().isCancelled());
        assertEquals(TOLD, first.getDateTimeStamp().getValue().toInstant());
        assertEquals("https://example.com/visits/1", first.getUrl().getValue());
    }

    @Test
    void commas_letters_with_accents_new_lines_and_lines_longer_than_75_bytes_come_back_whole() {
        String words = "Aile é; porte, ".repeat(20) + "\nfin\\fin";
        var entry = new CalendarFile.Entry(
                VISIT,
                1,
                TOLD,
                LocalDate.of(2027, 4, 20),
                LocalTime.of(9, 0),
                LocalTime.of(10, 30),
                false,
                true,
                words,
                "9, rue des Tanneurs; Port-Ambrose",
                "Deux\nlignes",
                null);
        byte[] file = CalendarFile.of("Visites de Zoé", TORONTO, List.of(entry));
        VEvent read = parsed(file).getEvents().getFirst();
        assertEquals(words, read.getSummary().getValue());
        assertEquals("9, rue des Tanneurs; Port-Ambrose", read.getLocation().getValue());
        assertEquals("Deux\nlignes", read.getDescription().getValue());
        assertNull(read.getUrl());
        String text = new String(file, StandardCharsets.UTF_8);
        assertTrue(text.contains("BEGIN:VTIMEZONE\r\nTZID:America/Toronto\r\n"), text);
        assertTrue(Stream.of(text.split("\r\n")).allMatch(line -> line.getBytes(StandardCharsets.UTF_8).length <= 75));
        assertArrayEquals(file, CalendarFile.of("Visites de Zoé", TORONTO, List.of(entry)));
    }

    private static CalendarFile.Entry entry(int sequence, LocalDate day, LocalTime starts, boolean cancelled) {
        return new CalendarFile.Entry(
                VISIT,
                sequence,
                TOLD,
                day,
                starts,
                starts.plusMinutes(90),
                cancelled,
                true,
                "9 Tannery Row",
                "9 Tannery Row, Port Ambrose",
                "About 60 min of work.",
                URI.create("https://example.com/visits/1"));
    }

    private static ICalendar read(CalendarFile.Entry... entries) {
        return parsed(CalendarFile.of("Visits", TORONTO, List.of(entries)));
    }

    private static ICalendar parsed(byte[] file) {
        return Biweekly.parse(new String(file, StandardCharsets.UTF_8)).first();
    }
}
