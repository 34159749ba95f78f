package changeover.contracts.agreements;

import changeover.contracts.agreements.TakenOverAgreements.InForce;
import changeover.contracts.calendar.DayInWords;
import changeover.contracts.calendar.Term;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * One agreement that runs is taken over by hand: it is not over by the day of the take-over, what was paid is no more than its
 * price, and no other agreement of the home is in force in its term.
 */
@ApplicationScoped
public class RunningAgreement {

    @Inject
    Agreements agreements;

    @Inject
    TakenOverAgreements takenOver;

    /** @throws Refused with a sentence for each field that cannot be so */
    public UUID takeOver(InForce running, LocalDate day) {
        List<Refusal> refusals = refusals(running, day);
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        return takenOver.takeOver(List.of(running), day).getFirst();
    }

    private List<Refusal> refusals(InForce running, LocalDate day) {
        List<Refusal> refusals = new ArrayList<>();
        Term term = Term.ofYear(running.from());
        if (!day.isBefore(term.until())) {
            refusals.add(Refusal.of("running.over", Map.of("day", DayInWords.of(term.last())))
                    .at("from"));
        }
        if (running.paid() != null && running.paid().compareTo(running.price()) > 0) {
            refusals.add(Refusal.of("oldsheet.paid-more", Map.of("paid", running.paid(), "price", running.price()))
                    .at("paid"));
        }
        if (running.lastVisit() != null && running.lastVisit().isAfter(day)) {
            refusals.add(Refusal.of("oldsheet.visit-to-come", Map.of("day", DayInWords.of(running.lastVisit())))
                    .at("lastVisit"));
        }
        agreements.of(running.homeId()).stream()
                .filter(other -> agreements.acceptance(other.id()).isPresent()
                        && agreements.ending(other.id()).isEmpty()
                        && other.term().window().meets(term.window()))
                .findFirst()
                .ifPresent(other -> refusals.add(Refusal.of("running.another", Map.of("number", other.number()))
                        .at("from")));
        return refusals;
    }
}
