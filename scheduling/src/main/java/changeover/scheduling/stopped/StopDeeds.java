package changeover.scheduling.stopped;

import changeover.contracts.calendar.DayInWords;
import changeover.contracts.tenants.People;
import changeover.contracts.tenants.Ticket;
import changeover.contracts.tenants.Today;
import changeover.contracts.words.Checks;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.scheduling.partners.Partner;
import changeover.scheduling.partners.PartnerPaper;
import changeover.scheduling.partners.Partners;
import changeover.scheduling.stopped.HeatAnswer.Called;
import changeover.scheduling.stopped.MachineStop.Owed;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What is done about a stopped machine: its duties, the heat of the night, and its end by whoever holds the ticket, one of us or a
 * licensed partner.
 */
@ApplicationScoped
public class StopDeeds {

    @Inject
    EntityManager rows;

    @Inject
    StopLists lists;

    @Inject
    People people;

    @Inject
    Partners partners;

    @Inject
    StopEndings endings;

    @Inject
    Today today;

    /** A duty is done: by whom, on which day. Each once. */
    public void done(UUID stop, String code, String who, LocalDate day, @Nullable String words) {
        MachineStop found = found(stop);
        var checks = new Checks();
        String by = checks.line("who", who);
        String said = checks.note("words", words);
        checks.refuseIf(day.isBefore(found.day()) || day.isAfter(today.day()), "day", "stopped.duty-day");
        Optional<Owed> owed = found.owed(code);
        checks.refuseIf(owed.isEmpty(), "code", "stopped.duty-unknown");
        checks.refuseIf(owed.filter(one -> one.done() != null).isPresent(), "code", "stopped.duty-done");
        checks.orRefuse();
        rows.createNativeQuery("insert into stop_duty_done (stop_id, code, who, day, at, words)"
                        + " values (:stop, :code, :who, :day, :at, cast(:words as text))")
                .setParameter("stop", stop)
                .setParameter("code", code)
                .setParameter("who", by)
                .setParameter("day", day)
                .setParameter("at", today.now())
                .setParameter("words", said)
                .executeUpdate();
    }

    /** Somebody says whether it is the only heat. A later answer stands beside the earlier one and counts. */
    public void heat(UUID stop, HeatAnswer answer, UUID by) {
        if (!found(stop).isOpen()) {
            throw Refusal.of("constraint.a_stop_ends_once").thrown();
        }
        List<Refusal> refusals = answer.refusals();
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        rows.createNativeQuery("""
                        insert into stop_heat (stop_id, person_id, at, only_heat, freezing, tonight, office_who, office_at,
                          customer_who, customer_at)
                        values (:stop, :person, :at, :only, :freezing, cast(:tonight as text), cast(:office as text),
                          cast(:officeAt as timestamptz), cast(:customer as text), cast(:customerAt as timestamptz))
                        """)
                .setParameter("stop", stop)
                .setParameter("person", by)
                .setParameter("at", today.now())
                .setParameter("only", answer.onlyHeat())
                .setParameter("freezing", answer.freezing())
                .setParameter("tonight", answer.tonight())
                .setParameter("office", who(answer.office()))
                .setParameter("officeAt", at(answer.office()))
                .setParameter("customer", who(answer.customer()))
                .setParameter("customerAt", at(answer.customer()))
                .executeUpdate();
    }

    /**
     * It may be used again, or no longer stands there: only the person who says so, with the ticket in force today.
     *
     * @param done what was done, in words
     * @param by the person who says so
     */
    public void end(UUID stop, StopEnd how, String done, UUID by) {
        MachineStop found = open(stop);
        Ticket ticket = ticket(found.ticket(), by)
                .orElseThrow(() -> Refusal.of(
                                "closeout.restore-ticket", Map.of("ticket", RestoringTicket.wording(found.ticket())))
                        .thrown());
        String said = said(done);
        endings.write(
                found,
                how,
                new StopEndings.Right(
                        ticket.kind(),
                        ticket.number().orElse(null),
                        ticket.expiresOn().orElse(null),
                        null,
                        null),
                today.day(),
                said,
                by);
    }

    /**
     * A licensed partner put it back, or took it out, on a day: their licence in the trade of the ticket held then.
     *
     * @param by the person here who writes it down
     */
    public void endByPartner(UUID stop, StopEnd how, String done, UUID partnerId, LocalDate day, UUID by) {
        MachineStop found = open(stop);
        Partner partner = partners.find(partnerId)
                .orElseThrow(() -> Refusal.of("partner.unknown").at("partner").thrown());
        if (day.isBefore(found.day()) || day.isAfter(today.day())) {
            throw Refusal.of("stopped.end-day").at("day").thrown();
        }
        PartnerPaper licence = Optional.of(partner.trade())
                .flatMap(Partner::ticketOf)
                .filter(found.ticket()::equals)
                .flatMap(_ -> partners.licenceOn(partnerId, day))
                .orElseThrow(() -> Refusal.of(
                                "stopped.partner-licence",
                                Map.of(
                                        "partner", partner.name(),
                                        "ticket", RestoringTicket.wording(found.ticket()),
                                        "day", DayInWords.of(day)))
                        .at("partner")
                        .thrown());
        String said = said(done);
        endings.write(
                found,
                how,
                new StopEndings.Right(found.ticket(), licence.number(), licence.expiresOn(), partnerId, licence.id()),
                day,
                said,
                by);
    }

    private MachineStop open(UUID stop) {
        MachineStop found = found(stop);
        if (!found.isOpen()) {
            throw Refusal.of("constraint.a_stop_ends_once").thrown();
        }
        return found;
    }

    private static String said(String done) {
        var checks = new Checks();
        String said = checks.note("done", done);
        checks.refuseIf(said == null, "done", "stopped.what-was-done");
        checks.orRefuse();
        return said == null ? "" : said;
    }

    /** Whether the person holds the ticket today. */
    public boolean mayEnd(MachineStop stop, UUID person) {
        return ticket(stop.ticket(), person).isPresent();
    }

    private Optional<Ticket> ticket(String kind, UUID person) {
        LocalDate day = today.day();
        return people.ticketsOf(person).stream()
                .filter(ticket -> ticket.kind().equals(kind) && ticket.holdsOn(day))
                .findFirst();
    }

    private MachineStop found(UUID stop) {
        return lists.find(stop).orElseThrow(() -> Refusal.of("stopped.unknown").thrown());
    }

    private static @Nullable String who(@Nullable Called called) {
        return called == null ? null : called.who();
    }

    private static @Nullable String at(@Nullable Called called) {
        return Optional.ofNullable(called)
                .map(Called::at)
                .map(Instant::toString)
                .orElse(null);
    }
}
