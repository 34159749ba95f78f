package changeover.scheduling.dayplan.change;

import changeover.contracts.calendar.Window;
import changeover.contracts.tenants.Ids;
import changeover.contracts.tenants.ManyRows;
import changeover.contracts.tenants.Membership;
import changeover.contracts.tenants.People;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Wording;
import changeover.scheduling.dayplan.DayOff;
import changeover.scheduling.dayplan.HourMoves;
import changeover.scheduling.dayplan.Minutes;
import changeover.scheduling.dayplan.Moving;
import changeover.scheduling.dayplan.Rosters;
import io.agroal.api.AgroalDataSource;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A whole day of the current business moves to later days: shown first, then done as it was shown. */
@ApplicationScoped
public class WholeDays {

    /** So many days at most are looked through for a place. */
    public static final int MOST = 31;

    @Inject
    WholeDayFacts facts;

    @Inject
    DaysHeld held;

    @Inject
    DayChanges changes;

    @Inject
    HourMoves moves;

    @Inject
    Rosters rosters;

    @Inject
    People people;

    @Inject
    AgroalDataSource database;

    /**
     * What is asked.
     *
     * @param technicians whose day falls away; everybody's where none is named
     * @param first the first day to which anything may go
     * @param last the last one
     */
    public record Asked(LocalDate day, Set<UUID> technicians, LocalDate first, LocalDate last) {

        public Asked {
            technicians = Set.copyOf(technicians);
        }
    }

    /** Why it falls away. @param why in the words of who writes it, kept with every visit that moves */
    public record Reason(DayCause cause, String why) {

        public Reason {
            why = why.isBlank() ? cause.words().en() : why.strip();
        }
    }

    /** A promise that the new day does not keep, and its last day. */
    public record Unkept(Wording task, LocalDate last) {}

    /** @param unkept by visit, those that break a promise alone */
    public record Proposed(Asked asked, WholeDay day, Map<UUID, List<Unkept>> unkept) {

        /** Tells this answer from any other, so that a yes is to what was shown. */
        public int shown() {
            return day.visits().stream()
                            .map(one ->
                                    one.visit().visit() + " " + one.technician() + " " + one.day() + " " + one.starts())
                            .toList()
                            .hashCode()
                    & Integer.MAX_VALUE;
        }
    }

    /** What was done. */
    public record Done(UUID id, LocalDate day, Reason reason, Proposed proposed) {}

    /** Where each visit would go; nothing moves. */
    public Proposed proposed(Asked asked) {
        check(asked);
        List<WholeDay.Leaving> leaving = facts.leaving(asked.day(), asked.technicians(), held.begun(asked.day()));
        Set<UUID> visits = leaving.stream().map(WholeDay.Leaving::visit).collect(Collectors.toSet());
        WholeDay day = WholeDay.of(
                leaving,
                asked.first().datesUntil(asked.last().plusDays(1)).toList(),
                other -> held.with(visits, other, held.begun(other)));
        return new Proposed(asked, day, unkept(asked, day));
    }

    private void check(Asked asked) {
        if (!asked.first().isAfter(asked.day())) {
            throw Refusal.of("whole-day.later").at("first").thrown();
        }
        if (asked.last().isBefore(asked.first())
                || asked.last().isAfter(asked.first().plusDays(MOST - 1))) {
            throw Refusal.of("whole-day.span", Map.of("most", MOST)).at("last").thrown();
        }
        Set<UUID> crew = people.technicians(asked.day()).stream()
                .map(Membership::personId)
                .collect(Collectors.toSet());
        if (!crew.containsAll(asked.technicians())) {
            throw Refusal.of("appointment.nobody").at("technicians").thrown();
        }
    }

    private Map<UUID, List<Unkept>> unkept(Asked asked, WholeDay day) {
        Map<UUID, WholeDay.Goes> goes = day.visits().stream()
                .collect(Collectors.toMap(one -> one.visit().visit(), one -> one));
        return facts.promised(goes.keySet()).entrySet().stream()
                .map(entry -> Map.entry(
                        entry.getKey(),
                        entry.getValue().stream()
                                .filter(one -> {
                                    LocalDate then = Objects.requireNonNull(goes.get(entry.getKey()))
                                            .day();
                                    return !one.due().until().isAfter(then == null ? asked.first() : then);
                                })
                                .map(one -> new Unkept(one.task(), one.due().last()))
                                .toList()))
                .filter(entry -> !entry.getValue().isEmpty())
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    /** Moves the day as it was shown; refused where it would go otherwise by now, or nothing is left to move. */
    public Done move(Asked asked, int shown, Reason reason) {
        Proposed proposed = proposed(asked);
        if (proposed.shown() != shown) {
            throw Refusal.of("day-order.changed").thrown();
        }
        if (proposed.day().visits().isEmpty()) {
            throw Refusal.of("whole-day.nothing").thrown();
        }
        var done = new Done(Ids.next(), asked.day(), reason, proposed);
        write(done);
        moves.write(
                proposed.day().visits().stream()
                        .map(one -> moved(one, asked.day()))
                        .toList(),
                new Moving(Moving.By.US, reason.why()));
        changes.giveBack(proposed.day().visits().stream()
                .filter(one -> one.day() == null)
                .map(one -> one.visit().visit())
                .toList());
        changes.elsewhere(proposed.day().visits().stream()
                .flatMap(one -> elsewhere(one).stream())
                .toList());
        if (held.begun(asked.day()) == 0) {
            closed(asked, reason);
        }
        return done;
    }

    private void write(Done done) {
        var day = ManyRows.into("whole_day", "id uuid, day date, cause text, why text")
                .add(
                        done.id(),
                        done.day(),
                        done.reason().cause().code(),
                        done.reason().why());
        var visits = ManyRows.into(
                "whole_day_visit",
                "whole_day_id uuid, visit_id uuid, customer_id uuid, was_technician_id uuid, was_starts time, told boolean,"
                        + " technician_id uuid, day date, starts time, standing text");
        for (WholeDay.Goes one : done.proposed().day().visits()) {
            WholeDay.Leaving was = one.visit();
            visits.add(
                    done.id(),
                    was.visit(),
                    was.customer(),
                    was.technician(),
                    Minutes.time(was.was()),
                    was.told(),
                    one.technician(),
                    one.day(),
                    one.day() == null ? null : Minutes.time(one.starts()),
                    one.standing().code());
        }
        try (Connection connection = database.getConnection()) {
            day.store(connection);
            visits.store(connection);
        } catch (SQLException cause) {
            throw new IllegalStateException("the day that moves could not be written", cause);
        }
    }

    private static HourMoves.Moved moved(WholeDay.Goes one, LocalDate day) {
        return new HourMoves.Moved(
                one.visit().visit(),
                one.visit().technician(),
                day,
                Minutes.time(one.visit().was()),
                one.technician(),
                one.day(),
                one.day() == null ? null : Minutes.time(one.starts()),
                one.visit().told());
    }

    private static List<DayChanges.Elsewhere> elsewhere(WholeDay.Goes one) {
        UUID technician = one.technician();
        LocalDate day = one.day();
        return technician == null || day == null
                ? List.of()
                : List.of(new DayChanges.Elsewhere(
                        one.visit().visit(), technician, day, Minutes.time(one.starts()), Minutes.time(one.ends())));
    }

    /** Nobody is given anything more on a day that fell away. */
    private void closed(Asked asked, Reason reason) {
        Set<@Nullable UUID> off = new HashSet<>();
        for (DayOff one : rosters.daysOff(Window.ofDay(asked.day()))) {
            off.add(one.personId().orElse(null));
        }
        List<@Nullable UUID> whose = new ArrayList<>();
        if (asked.technicians().isEmpty()) {
            whose.add(null);
        } else {
            whose.addAll(asked.technicians());
        }
        whose.stream()
                .filter(one -> !off.contains(one))
                .forEach(one -> rosters.takeOff(one, asked.day(), reason.why()));
    }
}
