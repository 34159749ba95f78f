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
    PlanAnswers plans;

    @Inject
    CallVersions versions;

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
        Agreement agreement = agreementOn(facts.homeId(), day(facts.rangAt())).orElse(null);
        Call call = Call.taken(id, facts, agreement == null ? null : agreement.id(), promised(facts, agreement));
        rows.persist(call);
        rows.flush();
        return call;
    }

    /** What was promised, else what the business answers in, or the plan where that is sooner. */
    private Instant promised(Call.Facts facts, @Nullable Agreement agreement) {
        Instant said = facts.promisedBy();
        if (said != null) {
            return said;
        }
        Instant usual = times.hours().promise(facts.rangAt(), facts.urgency(), agreement != null);
        return agreement == null
                ? usual
                : plans.on(agreement.planId(), agreement.term().from())
                        .map(answer -> plans.promise(answer, facts.rangAt()))
                        .filter(planned -> planned.isBefore(usual))
                        .orElse(usual);
    }

    /** The agreement in force at the home on the day; of one with another term nothing more need be read. */
    private Optional<Agreement> agreementOn(UUID homeId, LocalDate day) {
        return agreements.of(homeId).stream()
                .filter(agreement -> agreement.term().contains(day))
                .filter(agreement -> agreements.state(agreement, day) == AgreementState.IN_FORCE)
                .findFirst();
    }

    /**
     * What was written down was not what was said: a new version, the old ones stay. The hour at which they rang and the home do not
     * change; where somebody goes there and has not yet, they read the new words.
     *
     * @param facts with no promise for the answer time of what is said now
     * @param by who writes it
     */
    public Call.Facts correct(UUID callId, Call.Facts facts, String why, UUID by, Instant now) {
        Call call = find(callId).orElseThrow(() -> Refusal.of("call.unknown").thrown());
        if (why.isBlank()) {
            throw Refusal.of("call.correction-says-why").at("correctionWhy").thrown();
        }
        Call.Facts there = facts.at(call.homeId()).rangAt(call.facts().rangAt());
        Agreement agreement = call.agreementId().flatMap(agreements::find).orElse(null);
        Call.Facts right =
                Call.taken(callId, there, null, promised(there, agreement)).facts();
        Call.Facts before = versions.newest(call);
        if (right.equals(before)) {
            throw Refusal.of("call.nothing-corrected").thrown();
        }
        versions.write(callId, right, why.strip(), by, now);
        outcome(callId).flatMap(CallOutcome::visitId).ifPresent(visit -> {
            Locale locale = businesses.current().locale();
            visits.noteAgain(visit, CallInWords.note(before, locale), CallInWords.note(right, locale));
        });
        return right;
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
        Call.Facts facts = versions.newest(call);
        LocalDate end = last != null ? last : later(today, day(promisedBy(call, facts)));
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
                        CallInWords.note(facts, locale),
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

    private static Instant promisedBy(Call call, Call.Facts facts) {
        Instant promised = facts.promisedBy();
        return promised == null ? call.promisedBy() : promised;
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
