package changeover.scheduling.closeout;

import changeover.contracts.words.Refusal;
import changeover.contracts.words.Refused;
import changeover.scheduling.closeout.OperationAnswer.State;
import changeover.scheduling.closeout.OperationJson.ReadOperation;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;

/**
 * A visit is closed out by a list of operations, whoever sends them and however often: a form, a program or a device that
 * was out of reach. Each is taken once, in the device's order; one that is based on another waits for it.
 */
@ApplicationScoped
public class CloseOut {

    @Inject
    VisitsAtHand visits;

    @Inject
    Operations operations;

    @Inject
    ShopAround shop;

    @Inject
    Closing closing;

    @Inject
    Clock clock;

    /**
     * Takes what may be taken and answers each operation, in the order sent; the refused are kept as they were said.
     *
     * @param by the person who says it
     * @throws Refused when this business has no such visit
     */
    public List<OperationAnswer> apply(UUID visitId, List<SentOperation> sent, UUID by) {
        VisitAtHand visit = visits.lock(visitId);
        return new Batch(visit, by, clock.instant()).apply(sent);
    }

    /**
     * All or nothing, for a form or a single request.
     *
     * @throws Refused with every refusal, its field led by the operation's place: {@code operations[2].value}; then nothing
     *     was kept
     */
    public List<OperationAnswer> applyWhole(UUID visitId, List<SentOperation> sent, UUID by) {
        List<OperationAnswer> answers = apply(visitId, sent, by);
        List<Refusal> refusals = new ArrayList<>();
        for (int i = 0; i < answers.size(); i++) {
            String place = "operations[" + i + "]";
            for (Refusal refusal : answers.get(i).refusals()) {
                String field = refusal.field();
                refusals.add(refusal.at(field == null || field.isEmpty() ? place : place + "." + field));
            }
            if (answers.get(i).state() == State.WAITING) {
                refusals.add(Refusal.of("closeout.operation.waiting").at(place));
            }
        }
        if (!refusals.isEmpty()) {
            throw new Refused(refusals);
        }
        return answers;
    }

    /** One transaction's operations of one visit. */
    private final class Batch {

        private final VisitAtHand visit;
        private final UUID by;
        private final Instant now;
        private final SheetRules rules;
        private final Sheet before;
        private final List<ReceivedOperation> open = new ArrayList<>();
        private final Map<UUID, ReceivedOperation> known = new HashMap<>();
        private Sheet sheet;
        private int place;

        Batch(VisitAtHand visit, UUID by, Instant now) {
            this.visit = visit;
            this.by = by;
            this.now = now;
            List<ReceivedOperation> said = operations.of(visit.id());
            before = Operations.sheet(said);
            this.rules = new SheetRules(visit.apartFrom(before), shop.of(visit, by));
            sheet = before;
            for (ReceivedOperation earlier : said) {
                known.put(earlier.id(), earlier);
                place = Math.max(place, earlier.place().orElse(0));
                if (earlier.state().equals(State.WAITING.code())) {
                    open.add(earlier);
                }
            }
        }

        List<OperationAnswer> apply(List<SentOperation> sent) {
            learn(sent);
            sent.stream().sorted(SentOperation.ORDER).forEach(this::keep);
            settle();
            if (!sheet.equals(before)) {
                closing.follow(visit, before, sheet, by, now);
            }
            return sent.stream()
                    .map(one -> answer(Objects.requireNonNull(known.get(one.id()))))
                    .toList();
        }

        /** Ids seen at another visit, and what these wait for there. */
        private void learn(List<SentOperation> sent) {
            Set<UUID> ids = new HashSet<>();
            sent.forEach(one -> ids.add(one.id()));
            sent.stream().map(SentOperation::basedOn).filter(Objects::nonNull).forEach(ids::add);
            open.forEach(waiting -> waiting.basedOn().ifPresent(ids::add));
            ids.removeAll(known.keySet());
            operations.all(ids).forEach(elsewhere -> known.put(elsewhere.id(), elsewhere));
        }

        private void keep(SentOperation sent) {
            if (known.containsKey(sent.id())) {
                return;
            }
            ReceivedOperation said = ReceivedOperation.said(visit.id(), sent, by, now);
            operations.keep(said);
            known.put(said.id(), said);
            if (Storable.isTooLong(sent.body())) {
                said.refuse(AnswerJson.write(List.of(Refusal.of("closeout.operation.too-large"))));
            } else {
                open.add(said);
            }
        }

        private boolean isSettled(UUID earlier) {
            ReceivedOperation said = known.get(earlier);
            return said != null && !said.state().equals(State.WAITING.code());
        }

        /** Takes operation after operation until none is left that waits for nothing. */
        private void settle() {
            boolean moved = true;
            while (moved) {
                moved = false;
                for (ReceivedOperation next : List.copyOf(open)) {
                    if (next.basedOn().map(this::isSettled).orElse(true)) {
                        take(next);
                        open.remove(next);
                        moved = true;
                    }
                }
            }
        }

        private void take(ReceivedOperation said) {
            ReadOperation read = OperationJson.read(said.kind(), AnswerJson.tree(said.body()));
            Operation operation = read.operation();
            List<Refusal> refusals = operation == null ? read.refusals() : rules.refusals(sheet, said.id(), operation);
            if (operation == null || !refusals.isEmpty()) {
                said.refuse(AnswerJson.write(refusals));
                return;
            }
            said.take(++place, null);
            sheet = sheet.with(new Taken(said.id(), said.device(), said.at(), said.personId(), operation));
        }

        private OperationAnswer answer(ReceivedOperation said) {
            return said.visitId().equals(visit.id())
                    ? Operations.answer(said)
                    : new OperationAnswer(
                            said.id(), State.REFUSED, List.of(Refusal.of("closeout.operation-elsewhere")));
        }
    }
}
