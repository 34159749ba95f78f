package changeover.scheduling.dayplan.season;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/**
 * One technician's hours on one day, with what has been given away of them.
 *
 * @param from minute of the day
 * @param until minute of the day by which they are back
 */
public record Shift(UUID hand, LocalDate day, int from, int until, List<Booked> booked) {

    /**
     * A visit that has this day and hour; the season never moves it.
     *
     * @param starts minute of the day
     * @param ends minute of the day
     */
    public record Booked(int starts, int ends, int place) {}

    public Shift {
        booked = List.copyOf(booked);
        if (from < 0 || until < from || until > Wanted.MIDNIGHT) {
            throw new IllegalArgumentException("A shift from %d until %d".formatted(from, until));
        }
    }
}
