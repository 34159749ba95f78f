package changeover.billing.documents;

import changeover.billing.documents.band.HomeYear;
import changeover.contracts.catalogue.FindingLevel;
import changeover.contracts.pictures.Picture;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Everything that stands on a visit's report, in the language of whoever gets it.
 *
 * @param home the lines of the address
 * @param about what the visit was for: the turn to cooling
 * @param correction what a later version corrects, null on the first
 * @param byYou what the household does until the next visit, by day
 * @param nextVisit "15 October, 8:00" or "in October", null when none is planned
 * @param year the home's year, null where there is none to draw
 * @param cautions what may hurt somebody at the household's tasks: words, or the code of a caution of the papers'
 *     own; the general ones are always printed
 */
public record ReportSheet(
        Locale language,
        Letterhead from,
        List<String> home,
        String customer,
        LocalDate day,
        @Nullable LocalTime arrived,
        @Nullable LocalTime left,
        String technician,
        @Nullable String tickets,
        String about,
        @Nullable Correction correction,
        List<Reading> readings,
        List<Finding> findings,
        List<Done> done,
        List<NotDone> notDone,
        List<Part> parts,
        List<ByYou> byYou,
        @Nullable String nextVisit,
        @Nullable String note,
        Received received,
        @Nullable HomeYear year,
        List<String> cautions) {

    public ReportSheet {
        home = List.copyOf(home);
        readings = List.copyOf(readings);
        findings = List.copyOf(findings);
        done = List.copyOf(done);
        notDone = List.copyOf(notDone);
        parts = List.copyOf(parts);
        byYou = List.copyOf(byYou);
        cautions = List.copyOf(cautions);
    }

    /** A version after the first: when, by whom, and why. */
    public record Correction(int version, LocalDate day, String by, String why) {}

    /**
     * One value that was read.
     *
     * @param read as it was typed, with its unit; the only thing printed for yes, no and words
     * @param value the number in {@code unit}, null for words
     * @param low lowest expected in the same unit, in; null when open
     * @param high highest expected, in; null when open
     * @param finding the number of the finding that it led to, null when none
     */
    public record Reading(
            @Nullable String equipment,
            String what,
            @Nullable String state,
            String read,
            @Nullable BigDecimal value,
            @Nullable String unit,
            @Nullable BigDecimal low,
            @Nullable BigDecimal high,
            Standing standing,
            @Nullable Integer finding) {}

    /** How a reading stands to what is expected. */
    public enum Standing {
        GOOD,
        LOW,
        HIGH,
        NO_BAND
    }

    /** What was seen, as it looked, and what its maker wrote under it. */
    public record Photo(Picture picture, @Nullable String caption) {}

    /** Something seen, how much it matters, and what happens next. */
    public record Finding(
            FindingLevel level,
            @Nullable String equipment,
            String text,
            @Nullable String next,
            @Nullable String answer,
            List<Photo> photos) {
        public Finding {
            photos = List.copyOf(photos);
        }
    }

    /** What was done at one machine. */
    public record Done(String equipment, List<String> tasks) {
        public Done {
            tasks = List.copyOf(tasks);
        }
    }

    /** What was not done, and why: not today, or it doesn't apply. */
    public record NotDone(@Nullable String equipment, String task, String why) {}

    /** A part that stayed in the home. */
    public record Part(String quantity, String name) {}

    /** The household's own task and its last day. */
    public record ByYou(
            LocalDate until, String task, @Nullable String equipment) {}

    /** Who received the work, or why nobody did. */
    public record Received(
            @Nullable String by,
            @Nullable String nobodyWhy,
            @Nullable LocalTime at) {}
}
