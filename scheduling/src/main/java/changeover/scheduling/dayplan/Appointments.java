package changeover.scheduling.dayplan;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.HomesShut;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Ticket;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.scheduling.visits.Visit;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The days that visits have been given in the current business. A technician is in one place at a time: the database
 * refuses the second. A day outside a visit's window may be given; it is said.
 */
@ApplicationScoped
public class Appointments {

    @Inject
    EntityManager rows;

    @Inject
    Visits visits;

    @Inject
    People people;

    @Inject
    Rosters rosters;

    @Inject
    Needs needs;

    @Inject
    HourMoves moves;

    @Inject
    HomesShut shut;

    /**
     * When a visit is to be.
     *
     * @param technicianId the technician's person id
     * @param ends null for as long as the visit's planned minutes
     */
    public record Slot(
            UUID technicianId,
            LocalDate day,
            LocalTime starts,
            @Nullable LocalTime ends) {}

    /** What was given, and what whoever gave it should know. */
    public record Given(Appointment appointment, List<Wording> notes) {}

    /** Gives a visit its day, or moves one that nobody was told. */
    public Given give(UUID visitId, Slot slot) {
        return give(visitId, slot, null);
    }

    /** @param moving why it moves from the hour that it has; asked for where the customer was told that hour */
    public Given give(UUID visitId, Slot slot, @Nullable Moving moving) {
        Visit visit = visits.find(visitId)
                .orElseThrow(() -> Refusal.of("visit.unknown").thrown());
        if (visits.ending(visitId).isPresent()) {
            throw Refusal.of("visit.has-ended").thrown();
        }
        Membership technician = people.of(slot.technicianId())
                .filter(member -> member.worksOn(slot.day()))
                .orElseThrow(
                        () -> Refusal.of("appointment.nobody").at("technician").thrown());
        LocalTime ends = slot.ends() == null ? endOf(slot.starts(), visit.minutes()) : slot.ends();
        if (!slot.starts().isBefore(ends)) {
            throw Refusal.of("appointment.ends-before-it-starts").at("ends").thrown();
        }
        Appointment given = of(visitId)
                .map(before -> {
                    if (!before.isAt(slot.technicianId(), slot.day(), slot.starts())) {
                        moves.write(List.of(moved(before, slot)), moving);
                    }
                    before.move(slot.technicianId(), slot.day(), slot.starts(), ends);
                    return before;
                })
                .orElseGet(() -> Appointment.give(visitId, slot.technicianId(), slot.day(), slot.starts(), ends));
        rows.persist(given);
        rows.flush();
        return new Given(given, notes(visit, technician, slot));
    }

    private static LocalTime endOf(LocalTime starts, int minutes) {
        LocalTime ends = starts.plusMinutes(Math.max(15, minutes));
        return ends.isAfter(starts) ? ends : LocalTime.of(23, 59);
    }

    private List<Wording> notes(Visit visit, Membership technician, Slot slot) {
        var notes = new ArrayList<Wording>();
        if (!visit.window().contains(slot.day())) {
            Wording from = DayInWords.of(visit.window().from());
            Wording last = DayInWords.of(visit.window().last());
            notes.add(new Wording(
                    "This day is outside the visit’s window, " + from.en() + " to " + last.en() + ".",
                    "Ce jour est hors de la période de la visite, du " + from.fr() + " au " + last.fr() + "."));
        }
        shut.on(visit.homeId(), slot.day()).map(Appointments::isShut).ifPresent(notes::add);
        if (rosters.of(Window.ofDay(slot.day()))
                .on(technician.personId(), slot.day())
                .isEmpty()) {
            notes.add(new Wording(
                    technician.name() + " does not work on that day.",
                    technician.name() + " ne travaille pas ce jour-là."));
        }
        List<Ticket> held = people.ticketsOf(technician.personId());
        needs.of(visit.id()).tickets().stream()
                .sorted()
                .filter(kind ->
                        held.stream().noneMatch(ticket -> ticket.kind().equals(kind) && ticket.holdsOn(slot.day())))
                .map(kind -> new Wording(
                        technician.name() + " has no "
                                + TICKETS.getOrDefault(kind, new Wording(kind, kind))
                                        .en() + " that holds on that day.",
                        technician.name() + " n’a pas "
                                + TICKETS.getOrDefault(kind, new Wording(kind, kind))
                                        .fr() + " valable ce jour-là."))
                .forEach(notes::add);
        return List.copyOf(notes);
    }

    private static Wording isShut(HomesShut.Shut time) {
        String en = (time.heatOff() ? ", heat off" : "") + (time.waterDrained() ? ", water drained" : "");
        String fr = (time.heatOff() ? ", chauffage coupé" : "") + (time.waterDrained() ? ", eau vidangée" : "");
        return new Wording("The home is shut on that day" + en + ".", "La maison est fermée ce jour-là" + fr + ".");
    }

    private static final Map<String, Wording> TICKETS = Map.of(
            "refrigerant", new Wording("refrigerant card", "de carte de fluides frigorigènes"),
            "gas", new Wording("gas ticket", "de certificat de gaz"),
            "electrical", new Wording("electrical licence", "de licence d’électricité"));

    /** The visit has no day any more. */
    public void takeOff(UUID visitId) {
        takeOff(visitId, null);
    }

    /** @param moving why; asked for where the customer was told the hour */
    public void takeOff(UUID visitId, @Nullable Moving moving) {
        of(visitId).ifPresent(given -> {
            moves.write(List.of(moved(given, null)), moving);
            rows.remove(given);
            rows.flush();
        });
    }

    private HourMoves.Moved moved(Appointment before, @Nullable Slot slot) {
        return new HourMoves.Moved(
                before.visitId(),
                before.technicianId(),
                before.day(),
                before.starts(),
                slot == null ? null : slot.technicianId(),
                slot == null ? null : slot.day(),
                slot == null ? null : slot.starts(),
                moves.isTold(before.visitId()));
    }

    void takeOffAll(Collection<UUID> visitIds) {
        rows.flush();
        rows.createQuery("delete from Appointment where visitId in :visits")
                .setParameter("visits", visitIds)
                .executeUpdate();
    }

    public Optional<Appointment> of(UUID visitId) {
        return rows.createQuery("from Appointment where visitId = :visit", Appointment.class)
                .setParameter("visit", visitId)
                .getResultStream()
                .findFirst();
    }

    /** Whether the visit is the technician's own; on any day, or on one. */
    public boolean isOf(UUID visitId, UUID technicianId) {
        return of(visitId)
                .filter(given -> given.technicianId().equals(technicianId))
                .isPresent();
    }
}
