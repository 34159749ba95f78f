package changeover.scheduling.closeout;

import changeover.scheduling.closeout.Operation.PartTaken;
import changeover.scheduling.stock.KnownPart.Amount;
import changeover.scheduling.stock.Stock;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Stock, history and follow-ups are kept as the consequences of the sheet say, at closing and at every amendment. */
@ApplicationScoped
class ConsequenceRows {

    @Inject
    EntityManager rows;

    @Inject
    Stock stock;

    void follow(VisitAtHand visit, Consequences before, Consequences now, Closure closure, UUID van, Sheet sheet) {
        moveStock(visit, before, now, van, sheet.shortWhy().orElse(null));
        writeHistory(visit, before, now, closure);
        openFollowUps(visit, now, closure);
        rows.flush();
    }

    private void moveStock(
            VisitAtHand visit, Consequences before, Consequences now, UUID van, @Nullable String shortWhy) {
        before.parts().forEach((operation, part) -> {
            if (!now.parts().containsKey(operation)) {
                UUID from = stock.placeOf(operation).orElse(place(part, van));
                stock.giveBack(Ids.derived(operation, "back"), from, amount(part), visit.id(), null);
            }
        });
        now.parts().forEach((operation, part) -> {
            if (!before.parts().containsKey(operation)) {
                String why = part.shortWhy() == null ? shortWhy : part.shortWhy();
                stock.use(operation, place(part, van), amount(part), visit.id(), why);
            }
        });
    }

    private void writeHistory(VisitAtHand visit, Consequences before, Consequences now, Closure closure) {
        Set<UUID> undone = new HashSet<>(before.done());
        undone.removeAll(now.done());
        if (!undone.isEmpty()) {
            rows.createQuery("delete from TaskDone where visitTaskId in :undone")
                    .setParameter("undone", undone)
                    .executeUpdate();
        }
        for (UUID done : now.done()) {
            TaskAtHand task = visit.tasks().get(done);
            if (task != null && !before.done().contains(done)) {
                rows.persist(TaskDone.at(visit, task, closure.technicianId(), closure.day()));
            }
        }
    }

    private void openFollowUps(VisitAtHand visit, Consequences now, Closure closure) {
        List<FollowUp> there = rows.createQuery("from FollowUp where visitId = :visit", FollowUp.class)
                .setParameter("visit", visit.id())
                .getResultList();
        Set<Consequences.Next> known = new HashSet<>();
        for (FollowUp followUp : there) {
            known.add(followUp.next());
            followUp.agree(now.next().contains(followUp.next()), closure.day());
        }
        now.next().stream()
                .filter(next -> !known.contains(next))
                .forEach(next -> rows.persist(FollowUp.open(visit, next, closure.day())));
    }

    private static UUID place(PartTaken part, UUID van) {
        return part.place() == null ? van : part.place();
    }

    private static Amount amount(PartTaken part) {
        return new Amount(part.part(), part.quantity());
    }
}
