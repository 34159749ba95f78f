package changeover.scheduling.dayplan;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Business;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.words.Refusal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The working hours and days off of the current business. */
@ApplicationScoped
public class Rosters {

    @Inject
    EntityManager rows;

    @Inject
    Businesses businesses;

    @Inject
    People people;

    @Inject
    ChosenHolidays holidays;

    /** Who works when in the days of a window. */
    public Roster of(Window window) {
        Business business = businesses.current();
        List<UUID> technicians = people.technicians(window.from()).stream()
                .map(Membership::personId)
                .toList();
        Map<UUID, List<Roster.Hours>> hours = rows.createQuery("from RosterHours order by weekday", RosterHours.class)
                .getResultStream()
                .collect(Collectors.groupingBy(
                        RosterHours::personId, Collectors.mapping(RosterHours::hours, Collectors.toList())));
        List<DayOff> off = daysOff(window);
        Set<LocalDate> closed = off.stream()
                .filter(day -> day.personId().isEmpty())
                .map(DayOff::day)
                .collect(Collectors.toSet());
        Map<UUID, Set<LocalDate>> own = off.stream()
                .filter(day -> day.personId().isPresent())
                .collect(Collectors.groupingBy(
                        day -> day.personId().orElseThrow(), Collectors.mapping(DayOff::day, Collectors.toSet())));
        return new Roster(business.place(), holidays.choice(), technicians, hours, closed, own);
    }

    /** A technician's hours of the week; the usual ones when none were written. */
    public List<Roster.Hours> hoursOf(UUID personId) {
        List<Roster.Hours> own = rows.createQuery(
                        "from RosterHours where personId = :person order by weekday", RosterHours.class)
                .setParameter("person", personId)
                .getResultStream()
                .map(RosterHours::hours)
                .toList();
        return own.isEmpty() ? Roster.USUAL : own;
    }

    /** Whether hours of their own were ever written for somebody. */
    public boolean hasOwn(UUID personId) {
        return rows.createQuery("select count(h) from RosterHours h where h.personId = :person", Long.class)
                        .setParameter("person", personId)
                        .getSingleResult()
                > 0;
    }

    /** Writes a technician's hours of the week anew: one run of hours a weekday. */
    public void write(UUID personId, List<Roster.Hours> hours) {
        var weekdays = new HashSet<>();
        for (Roster.Hours one : hours) {
            if (!one.starts().isBefore(one.ends())) {
                throw Refusal.of("roster.hours-last").at("ends").thrown();
            }
            if (!weekdays.add(one.weekday())) {
                throw Refusal.of("roster.weekday-twice").at("weekday").thrown();
            }
        }
        rows.createQuery("delete from RosterHours where personId = :person")
                .setParameter("person", personId)
                .executeUpdate();
        hours.forEach(one -> rows.persist(RosterHours.of(personId, one)));
        rows.flush();
    }

    /** @param personId null when the whole business is closed that day */
    public DayOff takeOff(@Nullable UUID personId, LocalDate day, String why) {
        if (why.isBlank()) {
            throw Refusal.of("roster.day-off-says-why").at("why").thrown();
        }
        DayOff off = DayOff.of(personId, day, why.strip());
        rows.persist(off);
        rows.flush();
        return off;
    }

    public Optional<DayOff> dayOff(UUID id) {
        return Optional.ofNullable(rows.find(DayOff.class, id));
    }

    /** The day is worked after all; false when it was no day off of this person or of the whole business. */
    public boolean workAfterAll(UUID personId, UUID dayOffId) {
        DayOff off = rows.find(DayOff.class, dayOffId);
        if (off == null || !off.personId().map(personId::equals).orElse(true)) {
            return false;
        }
        rows.remove(off);
        rows.flush();
        return true;
    }

    public List<DayOff> daysOff(Window window) {
        return rows.createQuery("from DayOff where day >= :from and day < :until order by day", DayOff.class)
                .setParameter("from", window.from())
                .setParameter("until", window.until())
                .getResultList();
    }
}
