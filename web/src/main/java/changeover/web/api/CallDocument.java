package changeover.web.api;

import changeover.scheduling.calls.Call;
import changeover.scheduling.calls.CallLists;
import changeover.scheduling.calls.CallOutcome;
import changeover.scheduling.calls.Risk;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A call as the API says it.
 *
 * @param agreement in force at the home when they rang
 * @param heat yes, no or unknown
 * @param risks alarm, gas, symptoms, water, age, infant
 * @param urgency life, urgent, soon or ordinary
 * @param outcome null while nobody has answered it
 */
public record CallDocument(
        UUID id,
        UUID home,
        @Nullable UUID agreement,
        String caller,
        @Nullable String phone,
        Instant rangAt,
        String trouble,
        String words,
        String heat,
        List<String> risks,
        String urgency,
        boolean toldToLeave,
        Instant promisedBy,
        @Nullable Amount told,
        @Nullable String toldWords,
        @Nullable Outcome outcome) {

    /** @param how visit, advice or nothing */
    public record Outcome(String how, String why, @Nullable UUID visit, Instant at) {}

    /**
     * A call in a list.
     *
     * @param late whether it waits past its promise
     * @param became visit, advice or nothing; null while nobody has answered it
     * @param day of the visit it became
     */
    public record Line(
            UUID id,
            UUID home,
            String address,
            String caller,
            @Nullable String phone,
            Instant rangAt,
            String trouble,
            String heat,
            List<String> risks,
            String urgency,
            Instant promisedBy,
            boolean late,
            boolean planned,
            @Nullable String became,
            @Nullable UUID visit,
            @Nullable LocalDate day,
            @Nullable String technician) {}

    /** @param facts what stands of it now */
    static CallDocument of(Call call, Call.Facts facts, @Nullable CallOutcome outcome) {
        return new CallDocument(
                call.id(),
                call.homeId(),
                call.agreementId().orElse(null),
                facts.caller(),
                facts.phone(),
                facts.rangAt(),
                facts.trouble().code(),
                facts.words(),
                facts.heat().code(),
                codes(facts.risks()),
                facts.urgency().code(),
                facts.toldToLeave(),
                facts.promisedBy() == null ? call.promisedBy() : facts.promisedBy(),
                facts.told() == null ? null : Amount.of(facts.told()),
                facts.toldWords(),
                outcome == null
                        ? null
                        : new Outcome(
                                outcome.how().code(),
                                outcome.why(),
                                outcome.visitId().orElse(null),
                                outcome.at()));
    }

    static Line line(CallLists.Row row, Instant now) {
        return new Line(
                row.id(),
                row.homeId(),
                row.home(),
                row.caller(),
                row.phone(),
                row.rangAt(),
                row.trouble().code(),
                row.heat().code(),
                codes(row.risks()),
                row.urgency().code(),
                row.promisedBy(),
                row.waits() && row.waiting().isLate(now),
                row.planned(),
                row.became() == null ? null : row.became().code(),
                row.visitId(),
                row.day(),
                row.technician());
    }

    private static List<String> codes(Collection<Risk> risks) {
        return Risk.codes().stream()
                .filter(code -> risks.contains(Risk.ofCode(code)))
                .toList();
    }
}
