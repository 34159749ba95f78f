package changeover.scheduling.closeout;

import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.scheduling.closeout.OperationJson.ReadOperation;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/**
 * A closed visit is corrected by further operations, all or none of them, with a reason: stock, history and follow-ups
 * follow, the closure's version counts up, and what it said and says now is kept.
 */
@ApplicationScoped
public class Amendments {

    @Inject
    EntityManager rows;

    @Inject
    VisitsAtHand visits;

    @Inject
    Operations operations;

    @Inject
    ShopAround shop;

    @Inject
    SheetRows sheetRows;

    @Inject
    Dangers dangers;

    @Inject
    ConsequenceRows consequences;

    @Inject
    Closures closures;

    @Inject
    Closing closing;

    @Inject
    Clock clock;

    @Inject
    Event<TasksUndone> undone;

    @Inject
    Event<VisitAmended> amended;

    /**
     * Corrects a closed visit. The same amendment's id again gives the same answer and changes nothing.
     *
     * @param why the reason, in words
     * @return the closure's version that the amendment made
     * @throws Refused with every refusal; then nothing was changed
     */
    public int amend(UUID amendmentId, UUID visitId, String why, List<SentOperation> corrections, UUID by) {
        VisitAtHand locked = visits.lock(visitId);
        Amendment earlier = rows.find(Amendment.class, amendmentId);
        if (earlier != null) {
            return earlier.version();
        }
        Closure closure = closures.of(visitId)
                .orElseThrow(() -> Refusal.of("closeout.not-closed").thrown());
        VisitAtHand visit = locked.closedBy(closure.technicianId());
        if (why.isBlank() || why.length() > Body.LONGEST_WORDS || !why.equals(Storable.line(why, why.length()))) {
            throw Refusal.of("closeout.amendment-why").at("why").thrown();
        }
        List<ReceivedOperation> said = operations.of(visitId);
        Sheet before = Operations.sheet(said);
        Instant now = clock.instant();
        Sheet after = corrected(visit, before, said, corrections, amendmentId, by, now);
        return follow(
                visit,
                before,
                after,
                closure,
                Amendment.of(
                        amendmentId, visitId, closure.version() + 1, why.strip(), by, now, changes(before, after)));
    }

    private Sheet corrected(
            VisitAtHand visit,
            Sheet before,
            List<ReceivedOperation> said,
            List<SentOperation> corrections,
            UUID amendmentId,
            UUID by,
            Instant now) {
        SheetRules rules = new SheetRules(visit, shop.of(visit, by), before);
        List<Refusal> refusals = new ArrayList<>();
        int place = said.stream()
                .mapToInt(earlier -> earlier.place().orElse(0))
                .max()
                .orElse(0);
        Sheet sheet = before;
        for (int i = 0; i < corrections.size(); i++) {
            SentOperation sent = corrections.get(i);
            List<Refusal> why = refusals(rules, sheet, sent);
            if (why.isEmpty()) {
                ReceivedOperation kept = ReceivedOperation.said(visit.id(), sent, by, now);
                kept.take(++place, amendmentId);
                operations.keep(kept);
                sheet = sheet.with(Operations.taken(kept));
            }
            String at = "operations[" + i + "]";
            why.forEach(refusal -> refusals.add(refusal.at(refusal.field() == null ? at : at + "." + refusal.field())));
        }
        if (refusals.isEmpty() && sheet.equals(before)) {
            refusals.add(Refusal.of("closeout.amendment-empty"));
        }
        refusals.addAll(rules.unfinished(sheet));
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        return sheet;
    }

    private List<Refusal> refusals(SheetRules rules, Sheet sheet, SentOperation sent) {
        if (Storable.isTooLong(sent.body())) {
            return List.of(Refusal.of("closeout.operation.too-large"));
        }
        if (operations.find(sent.id()).isPresent()) {
            return List.of(Refusal.of("closeout.operation-elsewhere"));
        }
        ReadOperation read = OperationJson.read(sent.kind(), sent.body());
        Operation operation = read.operation();
        if (operation == null) {
            return read.refusals();
        }
        return operation instanceof Operation.Close
                ? List.of(Refusal.of("closeout.closed-already"))
                : rules.about(sheet, operation);
    }

    private int follow(VisitAtHand visit, Sheet before, Sheet after, Closure closure, Amendment amendment) {
        VisitClosed told = closing.facts(visit, before, closure);
        UUID by = closure.technicianId();
        Sheet both = new Sheet(union(before, after));
        UUID van = closing.van(visit, by, both);
        sheetRows.follow(visit, before, after, van, closure.day());
        dangers.tell(visit, before, after, closure.day());
        closure.follow(after);
        rows.persist(amendment);
        Consequences earlier = Consequences.of(before);
        Consequences now = Consequences.of(after);
        consequences.follow(visit, earlier, now, closure, van, after);
        rows.flush();
        Set<UUID> takenBack = new LinkedHashSet<>(earlier.done());
        takenBack.removeAll(now.done());
        if (!takenBack.isEmpty()) {
            undone.fire(new TasksUndone(visit.id(), takenBack));
        }
        amended.fire(new VisitAmended(amendment.id(), closure.version(), told, closing.facts(visit, after, closure)));
        return closure.version();
    }

    private static java.util.Map<String, Taken> union(Sheet before, Sheet after) {
        var both = new java.util.LinkedHashMap<>(before.standing());
        both.putAll(after.standing());
        return both;
    }

    /** Subject by subject what stood and what stands. */
    static String changes(Sheet before, Sheet after) {
        ArrayNode changes = AnswerJson.JSON.createArrayNode();
        Set<String> subjects = new LinkedHashSet<>(before.standing().keySet());
        subjects.addAll(after.standing().keySet());
        for (String subject : subjects) {
            var old = before.of(subject).map(Amendments::said);
            var now = after.of(subject).map(Amendments::said);
            if (!old.equals(now)) {
                var change = changes.addObject().put("what", subject);
                change.put(
                        "kind",
                        after.of(subject)
                                .or(() -> before.of(subject))
                                .map(taken -> taken.operation().kind())
                                .orElse(""));
                old.ifPresent(operation -> change.set("old", operation));
                now.ifPresent(operation -> change.set("new", operation));
            }
        }
        return changes.toString();
    }

    /** Of coming and leaving the hour is what was said. */
    private static ObjectNode said(Taken taken) {
        ObjectNode said = OperationJson.write(taken.operation());
        return taken.operation() instanceof Operation.Arrive || taken.operation() instanceof Operation.Leave
                ? said.put("at", taken.at().toString())
                : said;
    }
}
