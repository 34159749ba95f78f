package changeover.scheduling.partnerwork;

import changeover.contracts.tenants.Businesses;
import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.scheduling.closeout.CloseOut;
import changeover.scheduling.closeout.Ids;
import changeover.scheduling.closeout.Operation;
import changeover.scheduling.closeout.Outcome;
import changeover.scheduling.closeout.SentOperation;
import changeover.scheduling.partners.GivenVisits;
import changeover.scheduling.visits.VisitTask;
import changeover.scheduling.visits.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A visit that a partner made is closed in their name by whoever has their word: every task done but those that are named,
 * judged like any close-out, with the partner's licence for a ticket.
 */
@ApplicationScoped
public class PartnerWork {

    private static final String DEVICE = "partner";

    @Inject
    GivenVisits given;

    @Inject
    Visits visits;

    @Inject
    CloseOut closeOut;

    @Inject
    Businesses businesses;

    /**
     * What the partner said.
     *
     * @param minutes at the home; nought where nobody knows
     * @param notDone tasks that they did not do
     * @param notDoneWhy why not; asked for where there is one
     * @param words for the household, as printed on the report
     * @param receivedBy who received the work; null where nobody did, with the reason in {@code nobodyWhy}
     */
    public record Said(
            LocalDate day,
            int minutes,
            Set<UUID> notDone,
            @Nullable String notDoneWhy,
            @Nullable String words,
            @Nullable String receivedBy,
            @Nullable String nobodyWhy) {

        public Said {
            notDone = Set.copyOf(notDone);
        }
    }

    /**
     * All or nothing.
     *
     * @param form the id of the form or the request: the same again says the same
     * @param by who writes it down
     */
    public void close(UUID visit, Said said, UUID form, UUID by) {
        if (!said.notDone().isEmpty() && said.notDoneWhy() == null) {
            throw Refusal.of("partner.not-done-why").at("notDoneWhy").thrown();
        }
        given.done(visit, said.day());
        Instant at = said.day()
                .atTime(LocalTime.NOON)
                .atZone(businesses.current().zone())
                .toInstant();
        List<SentOperation> sent = new ArrayList<>();
        for (Operation one : operations(visit, said)) {
            sent.add(SentOperation.of(Ids.derived(form, one.kind() + sent.size()), DEVICE, sent.size(), at, one));
        }
        try {
            closeOut.applyWhole(visit, sent, by);
        } catch (Refused refused) {
            throw new Refused(
                    refused.refusals().stream().map(PartnerWork::atField).toList());
        }
    }

    private List<Operation> operations(UUID visit, Said said) {
        List<UUID> tasks = visits.tasksOf(visit).stream()
                .filter(task -> task.who().equals("technician"))
                .map(VisitTask::id)
                .toList();
        if (!tasks.containsAll(said.notDone())) {
            throw Refusal.of("closeout.task-not-found").at("notDone").thrown();
        }
        List<Operation> all = new ArrayList<>();
        for (UUID task : tasks) {
            boolean left = said.notDone().contains(task);
            all.add(new Operation.TaskAnswered(
                    task, left ? Outcome.DEFERRED : Outcome.DONE, left ? said.notDoneWhy() : null));
        }
        all.add(new Operation.MinutesTold(said.minutes(), 0, null));
        if (said.words() != null) {
            all.add(new Operation.HouseholdNote(said.words()));
        }
        all.add(new Operation.Received(said.receivedBy(), said.nobodyWhy()));
        all.add(new Operation.Close(null));
        return all;
    }

    /** What is said of an operation's place is nothing to whoever filled in the form. */
    private static Refusal atField(Refusal refusal) {
        return switch (refusal.code()) {
            case "closeout.operation.received-by", "closeout.received-by" -> refusal.at("receivedBy");
            case "closeout.ticket" -> refusal.at("done");
            default -> Refusal.of(refusal.code(), refusal.facts());
        };
    }
}
