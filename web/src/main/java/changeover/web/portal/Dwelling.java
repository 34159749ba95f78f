package changeover.web.portal;

import changeover.billing.documents.band.YearTable;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One home as its customer sees it: no price, no key, nothing about anybody else.
 *
 * @param line street and unit
 * @param next the visit to come, or none
 * @param promised whether anything is promised in this year, so that its band and table stand on the page
 * @param band the year as a drawing, or empty
 * @param stopped what must not be used
 * @param own what the household does itself and has not done yet, the earliest first
 */
public record Dwelling(
        UUID id,
        String line,
        @Nullable Next next,
        boolean promised,
        String band,
        YearTable table,
        LocalDate first,
        LocalDate last,
        List<Own> own,
        List<Warning> cautions,
        List<Seen> stopped,
        List<Seen> seen,
        List<Report> reports) {

    /**
     * The visit to come.
     *
     * @param day its day in words, or empty while it has none
     * @param starts the hour, or empty
     * @param technician who comes, or empty
     * @param first the first day it may be made, in words
     * @param last the last one
     */
    public record Next(String day, String starts, String technician, int minutes, String first, String last) {}

    /** What the household does itself, by a day. */
    public record Own(String task, String machine, LocalDate dueOn, boolean late) {}

    /** What may hurt somebody at what the household does itself. */
    public record Warning(String kind, String title, String words) {}

    /** What was found at a visit and is not put right yet; free words keep the language they were written in. */
    public record Seen(String level, String machine, String words, String language, LocalDate day) {}

    /** A visit that was made; its report is a paper to read. */
    public record Report(UUID visit, LocalDate day) {}
}
