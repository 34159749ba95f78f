package changeover.scheduling.households;

import changeover.scheduling.visits.HouseholdTaskDone;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;

/** What a household did on another day than it was due, or saw of a filter, moves what comes after. */
@ApplicationScoped
class WhenHouseholdTaskDone {

    @Inject
    FilterSlots slots;

    @Inject
    HouseholdRounds rounds;

    void follow(@Observes HouseholdTaskDone done) {
        UUID unit = done.equipmentId();
        if (unit == null) {
            return;
        }
        boolean onItsDay = done.day().equals(done.dueOn());
        var slot = slots.find(unit).filter(one -> one.taskCode().equals(done.taskCode()));
        if (slot.isPresent() && onItsDay) {
            rounds.followOnItsDay(slot.get(), done.day());
        } else if (slot.isPresent()) {
            rounds.follow(List.of(slot.get()));
        } else if (!onItsDay && !done.act().equals("check")) {
            rounds.moved(done, unit);
        }
    }
}
