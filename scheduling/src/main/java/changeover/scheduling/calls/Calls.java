package changeover.scheduling.calls;

import changeover.contracts.agreements.Agreement;
import changeover.contracts.agreements.AgreementState;
import changeover.contracts.agreements.Agreements;
import changeover.contracts.calendar.Window;
import changeover.contracts.customers.Homes;
import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Refusal;
import changeover.scheduling.visits.NewVisit;
import changeover.scheduling.visits.VisitKind;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The calls of the current business: taken, answered once, never deleted. */
@ApplicationScoped
public class Calls {

    @Inject
    EntityManager rows;

    @Inject
    Businesses businesses;

    @Inject
    Homes homes;

    @Inject
    Agreements agreements;

    @Inject
    AnswerTimes times;

    @Inject
    Visits visits;

    /**
     * Writes down what was said. The same id again gives the call that is there.
     *
     * @param now to which nothing that is said to have been can come after
     */
    public Call take(UUID id, Call.Facts facts, Instant now) {
        Optional<Call> before = find(id);
        if (before.isPresent()) {
            return before.get();
        }
        if (facts.rangAt().isAfter(now)) {
            throw Refusal.of("call.ahead").at("day").thrown();
        }
        var _ = homes.get(facts.homeId())
                .orElseThrow(() -> Refusal.of("call.home-unknown").at("home").thrown());
        UUID agreement = agreementOn(facts.homeId(), day(facts.rangAt())).orElse(null);
        Instant promised = facts.promisedBy() != null
                ? facts.promisedBy()
                : times.hours().promise(facts.rangAt(), facts.urgency(), agreement != null);
        Call call = Call.taken(id, facts, agreement, promised);
        rows.persist(call);
        rows.flush();
        return call;
    }

    /** The agreement in force at the home on the day; of one with another term nothing more need be read. */
    private Optional<UUID> agreementOn(UUID homeId, LocalDate day) {
        return agreements.of(homeId).stream()
                .filter(agreement -> agreement.term().contains(day))
                .filter(agreement -> agreements.state(agreement, day) == AgreementState.IN_FORCE)
                .map(Agreement::id)
                .findFirst();
    }

    public Optional<Call> find(UUID id) {
        return Optional.ofNullable(rows.find(Call.class, id));
    }

    public Optional<CallOutcome> outcome(UUID callId) {
        return rows.createQuery("from CallOutcome where callId = :call", CallOutcome.class)
                .setParameter("call", callId)
                .getResultStream()
                .findFirst();
    }

    /**
     * Somebody goes there: from today until the last day, which is never before today. Its day is given like any other's.
     *
     * @param last null for the promised day
     */
    public CallOutcome visit(UUID callId, int minutes, @Nullable LocalDate last, String why, Instant now) {
        Call call = open(callId, why);
        LocalDate today = day(now);
        LocalDate end = last != null ? last : later(today, day(call.promisedBy()));
        if (end.isBefore(today)) {
            throw Refusal.of("call.visit-in-the-past").at("last").thrown();
        }
        Locale locale = businesses.current().locale();
        UUID visit = visits.make(new NewVisit(
                        call.homeId(),
                        null,
                        VisitKind.CALL,
                        Window.ofDays(today, end),
                        minutes,
                        null,
                        CallInWords.note(call.facts(), locale),
                        List.of()))
                .id();
        return keep(CallOutcome.of(callId, Became.VISIT, why.strip(), visit, now));
    }

    /** What was said on the telephone was enough. */
    public CallOutcome advice(UUID callId, String why, Instant now) {
        open(callId, why);
        return keep(CallOutcome.of(callId, Became.ADVICE, why.strip(), null, now));
    }

    /** Nobody goes there, and nothing was advised. */
    public CallOutcome nothing(UUID callId, String why, Instant now) {
        open(callId, why);
        return keep(CallOutcome.of(callId, Became.NOTHING, why.strip(), null, now));
    }

    private Call open(UUID callId, String why) {
        Call call = find(callId).orElseThrow(() -> Refusal.of("call.unknown").thrown());
        if (outcome(callId).isPresent()) {
            throw Refusal.of("call.answered").thrown();
        }
        if (why.isBlank()) {
            throw Refusal.of("call.says-why").at("why").thrown();
        }
        return call;
    }

    private CallOutcome keep(CallOutcome outcome) {
        rows.persist(outcome);
        rows.flush();
        return outcome;
    }

    private LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, businesses.current().zone());
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }
}
