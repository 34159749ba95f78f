package changeover.scheduling.stopped;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A machine that must not be used, with what was done about it.
 *
 * @param visitId where it was seen; null when the office wrote it down
 * @param person name of who stopped it; empty where nobody knows
 * @param sentence code of what was seen; null with {@code seen} and its {@code language}
 * @param ticket who may put it back: refrigerant, gas or electrical, as it was corrected last
 * @param firstTicket the one that was asked for when it was stopped
 * @param corrections of the ticket, the first one first
 * @param place of the home, ISO 3166-2
 * @param heat what was answered last about the heat; null while nobody was asked
 * @param back how it ended; null while it must not be used
 * @param added duties that the office added
 */
public record MachineStop(
        UUID id,
        UUID homeId,
        String home,
        @Nullable UUID equipmentId,
        @Nullable String machine,
        @Nullable UUID visitId,
        @Nullable UUID findingId,
        String person,
        Instant at,
        LocalDate day,
        @Nullable String sentence,
        @Nullable String seen,
        @Nullable String language,
        @Nullable String shutOff,
        String ticket,
        String firstTicket,
        String place,
        @Nullable Heat heat,
        @Nullable Back back,
        List<Correction> corrections,
        List<StopDuty> added,
        List<Done> done) {

    public MachineStop {
        corrections = List.copyOf(corrections);
        added = List.copyOf(added);
        done = List.copyOf(done);
    }

    /**
     * Somebody said that another ticket is the right one.
     *
     * @param person name of who said so
     */
    public record Correction(String ticket, String why, String person, Instant at) {}

    /** @param person name of who said so */
    public record Heat(HeatAnswer answer, String person, Instant at) {}

    /**
     * @param person name of who holds the ticket, or of who wrote down what the partner did
     * @param partner name of the partner whose licence it was; null where it was one of us
     */
    public record Back(
            StopEnd how,
            String person,
            @Nullable String partner,
            String ticket,
            @Nullable String number,
            @Nullable LocalDate until,
            LocalDate day,
            String done) {

        /** Who put it back. */
        public String who() {
            return partner == null ? person : partner;
        }
    }

    /** A duty that was done. */
    public record Done(
            String code,
            String who,
            LocalDate day,
            @Nullable String words) {}

    /** A duty with its last day, and how it was done; null while it was not. */
    public record Owed(
            StopDuty duty, LocalDate due, @Nullable Done done) {

        public boolean isLate(LocalDate day) {
            return done == null && due.isBefore(day);
        }
    }

    public boolean isOpen() {
        return back == null;
    }

    /** Whether nobody has said yet if it is the only heat. */
    public boolean asksForHeat() {
        return isOpen() && heat == null;
    }

    /** Everything that has to be done, done or not, the first due first; what was done for a ticket before stays done. */
    public List<Owed> duties() {
        List<StopDuty> asked = StopDuty.of(place, ticket, day);
        Stream<StopDuty> before = Stream.concat(
                        Stream.of(firstTicket), corrections.stream().map(Correction::ticket))
                .distinct()
                .flatMap(one -> StopDuty.of(place, one, day).stream())
                .distinct()
                .filter(duty -> doneOf(duty) != null)
                .filter(duty -> asked.stream().noneMatch(one -> one.code().equals(duty.code())));
        return Stream.of(asked.stream(), before, added.stream())
                .flatMap(duties -> duties)
                .sorted(Comparator.comparingInt(StopDuty::days))
                .map(duty -> new Owed(duty, duty.dueOn(day), doneOf(duty)))
                .toList();
    }

    /** What nobody has done yet. */
    public List<Owed> owed() {
        return duties().stream().filter(one -> one.done() == null).toList();
    }

    Optional<Owed> owed(String code) {
        return duties().stream().filter(one -> one.duty().code().equals(code)).findFirst();
    }

    private @Nullable Done doneOf(StopDuty duty) {
        return done.stream()
                .filter(one -> one.code().equals(duty.code()))
                .findFirst()
                .orElseGet(() -> duty.code().equals(StopDuty.SHUT_OFF) && shutOff != null
                        ? new Done(duty.code(), person, day, shutOff)
                        : null);
    }
}
