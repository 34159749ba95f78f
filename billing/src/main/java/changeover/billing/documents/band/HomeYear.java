package changeover.billing.documents.band;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One home's twelve months: what was promised for each machine, the visits that keep it, and what the household does itself.
 *
 * @param begins any day of the month in which the term starts; the year runs twelve whole months from its first
 */
public record HomeYear(
        LocalDate begins,
        LocalDate today,
        List<Turn> turns,
        List<Row> rows,
        List<Visit> visits,
        List<HouseholdTask> household) {

    /** What can be said of a visit: closed, has a day, or somebody asked to move it. */
    public enum Standing {
        CLOSED,
        PENCILLED,
        MOVING
    }

    /** What can be said of one thing the household was to do. */
    public enum Done {
        DONE,
        TO_COME,
        NOT_DONE
    }

    /** A machine, or a thing that hangs on one, with what is promised for it. */
    public record Row(String name, List<Promise> promises) {}

    /**
     * A promise holds from its first day to its last, both inclusive.
     *
     * @param visit the key of the visit that serves it, or none yet
     */
    public record Promise(
            String what,
            LocalDate first,
            LocalDate last,
            @Nullable String visit) {}

    /** A visit on its day; one without a day is not drawn. */
    public record Visit(String key, LocalDate day, Standing standing) {}

    /** A thing the household does itself, with each day it is due or was done. */
    public record HouseholdTask(String name, List<Mark> marks) {}

    /** One time of a household's task. */
    public record Mark(LocalDate day, Done done) {}

    public HomeYear {
        begins = begins.withDayOfMonth(1);
        turns = List.copyOf(turns);
        rows = List.copyOf(rows);
        visits = List.copyOf(visits);
        household = List.copyOf(household);
    }

    /** The last day of the twelve months. */
    public LocalDate last() {
        return begins.plusMonths(12).minusDays(1);
    }

    /** The visit that serves the promise, if it has a day. */
    public Optional<Visit> visitOf(Promise promise) {
        return visits.stream()
                .filter(visit -> visit.key().equals(promise.visit()))
                .findFirst();
    }

    /** A promise is kept when its visit was closed. */
    public boolean kept(Promise promise) {
        return visitOf(promise)
                .filter(visit -> visit.standing() == Standing.CLOSED)
                .isPresent();
    }

    /** A promise is late when its last day is past and it was not kept. */
    public boolean late(Promise promise) {
        return today.isAfter(promise.last()) && !kept(promise);
    }

    /** Every promise of the year, machine by machine. */
    public List<Promise> promises() {
        return rows.stream().flatMap(row -> row.promises().stream()).toList();
    }
}
