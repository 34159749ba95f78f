package changeover.scheduling.stopped;

import changeover.contracts.words.Wording;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What has to be done about a stopped machine, by the place of the home and the ticket it asks for; a place's own row of a duty
 * stands instead of the one that holds everywhere.
 *
 * @param place ISO 3166-2, or {@link #EVERYWHERE}
 * @param ticket of the machines it holds for; null for all
 * @param from first day, in; null for always
 * @param until the day it no longer stands; null while it stands
 * @param who whoever-stops or office
 * @param days after the day of the stop; nought is at once
 * @param read whether the source's text was read; false means from memory or at second hand
 */
public record StopDuty(
        String code,
        String place,
        @Nullable String ticket,
        @Nullable LocalDate from,
        @Nullable LocalDate until,
        String who,
        int days,
        Wording wording,
        Wording source,
        boolean read) {

    public static final String EVERYWHERE = "*";

    /** Who has to do it. */
    public static final String OFFICE = "office";

    public static final String WHOEVER = "whoever-stops";

    /** Done already where it was said at the stop itself. */
    public static final String SHUT_OFF = "shut-off";

    private static final List<StopDuty> ROWS = StopTable.read("duties", StopDuty::row);

    /** The duties of a machine that was stopped on that day, the first due first. */
    public static List<StopDuty> of(String place, String ticket, LocalDate day) {
        Map<String, StopDuty> duties = new LinkedHashMap<>();
        for (boolean own : new boolean[] {false, true}) {
            ROWS.stream()
                    .filter(row -> row.place.equals(own ? place : EVERYWHERE))
                    .filter(row -> row.holds(ticket, day))
                    .forEach(row -> duties.put(row.code, row));
        }
        return duties.values().stream()
                .sorted(java.util.Comparator.comparingInt(StopDuty::days))
                .toList();
    }

    public LocalDate dueOn(LocalDate stopped) {
        return stopped.plusDays(days);
    }

    private boolean holds(String asked, LocalDate day) {
        return (ticket == null || ticket.equals(asked))
                && (from == null || !day.isBefore(from))
                && (until == null || day.isBefore(until));
    }

    private static StopDuty row(JsonNode row) {
        return new StopDuty(
                row.get("code").asText(),
                row.get("place").asText(),
                row.hasNonNull("ticket") ? row.get("ticket").asText() : null,
                day(row, "from"),
                day(row, "until"),
                row.get("who").asText(),
                row.get("days").asInt(),
                new Wording(row.get("en").asText(), row.get("fr").asText()),
                new Wording(
                        row.get("source").asText(),
                        row.get(row.hasNonNull("sourceFr") ? "sourceFr" : "source")
                                .asText()),
                row.get("read").asBoolean());
    }

    private static @Nullable LocalDate day(JsonNode row, String member) {
        return row.hasNonNull(member) ? LocalDate.parse(row.get(member).asText()) : null;
    }
}
